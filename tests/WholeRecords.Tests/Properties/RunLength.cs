namespace WholeRecords.Tests.Properties;

/// <summary>How much is asked.</summary>
/// <param name="EveryPlace">Reasons at every place of the record, or only where the engine asks, found something bad, or the table of reasons has a row.</param>
/// <param name="Pairs">How many pairs of escapes for each record, drawn by its name; null: every pair of words, and of a word and such a reason.</param>
/// <param name="OneIn">Of removals and of moves towards danger one in so many, drawn by record and place.</param>
internal sealed record RunLength(bool EveryPlace, int? Pairs, int OneIn)
{
    /// <summary>What a plain run asks: minutes.</summary>
    public static RunLength Ordinary { get; } = new(EveryPlace: false, Pairs: 20, OneIn: 3);

    /// <summary>Everything: hours.</summary>
    public static RunLength Every { get; } = new(EveryPlace: true, Pairs: null, OneIn: 1);

    /// <summary>Whether a variant of a record is among those that are asked about: always the same ones.</summary>
    public bool Takes(Base one, string variant) => OneIn == 1 || (uint)NumberOf($"{one.Name} {variant}") % (uint)OneIn == 0;

    /// <summary>A number of a text, the same in every process.</summary>
    public static int NumberOf(string text) => text.Aggregate(17, (number, letter) => unchecked(((number * 31) + letter) ^ (number >>> 15)));
}
