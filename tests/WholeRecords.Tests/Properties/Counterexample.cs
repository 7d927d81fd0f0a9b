namespace WholeRecords.Tests.Properties;

/// <summary>One case in which an engine does not keep a property.</summary>
/// <param name="Claim">The part of a property that it breaks.</param>
/// <param name="Kind">What was done and what came of it, without the places.</param>
/// <param name="Record">Name of the record.</param>
/// <param name="Changes">What was done to it.</param>
/// <param name="Steps">How many changes that were.</param>
/// <param name="Said">What the engine said before and after.</param>
internal sealed record Counterexample(Claim Claim, string Kind, string Record, string Changes, int Steps, string Said)
{
    public static Counterexample Of(Claim claim, string kind, Base one, Variant variant, Answer after) =>
        new(claim, $"{variant.Kind}: {kind}", one.Name, variant.Words, variant.Changes.Count, $"{Order.Of(one.Said)} -> {Order.Of(after)}");

    public static Counterexample OfItself(Claim claim, string kind, Base one) => new(claim, kind, one.Name, "", 0, Order.Of(one.Said));

    /// <summary>The shortest first, and then always the same.</summary>
    public static IComparer<Counterexample> ByLength { get; } = Comparer<Counterexample>.Create((one, other) =>
        (one.Steps, one.Changes.Length).CompareTo((other.Steps, other.Changes.Length)) is var byLength and not 0 ? byLength
        : string.CompareOrdinal($"{one.Record} {one.Changes}", $"{other.Record} {other.Changes}"));
}

/// <summary>A part of a property that can be kept or broken by itself.</summary>
/// <param name="Id">Number of the property on the page of duties, with a letter where it has parts.</param>
/// <param name="Says">The claim in one sentence.</param>
internal sealed record Claim(string Id, string Says);

/// <summary>A property that every engine should have, asked of one record at a time.</summary>
internal interface IProperty
{
    IReadOnlyList<Claim> Claims { get; }

    /// <summary>Asks the engine about a record and its variants.</summary>
    /// <param name="one">The record.</param>
    /// <param name="asked">Counts every question put to the engine, by claim.</param>
    IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked);
}
