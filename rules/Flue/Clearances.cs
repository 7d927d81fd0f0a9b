using RuleModel;
using ServiceRecords;

namespace Rules;

/// <summary>Which line of the clearance table concerns a terminal. The classes of input belong to the table's layout, as in building-regulation guidance.</summary>
internal static class Clearances
{
    private static readonly int[] NoClasses = [];

    /// <summary>Products that leave too near to it can come into a building.</summary>
    public static bool LeadsIntoABuilding(this ClearanceTo to) =>
        to is ClearanceTo.BelowOpening or ClearanceTo.AboveOpening or ClearanceTo.BesideOpening or ClearanceTo.CarportOpening;

    /// <summary>Upper bounds, in kW net, of the classes of input in this row of the table; none where the input does not matter.</summary>
    public static IReadOnlyList<int> InputClasses(ClearanceTo to, bool isFanned) => (to, isFanned) switch
    {
        (ClearanceTo.VerticalPipe, true) => [5],
        (ClearanceTo.BelowOpening, false) => [7, 14, 32],
        (ClearanceTo.AboveOpening, false) => [32],
        (ClearanceTo.BesideOpening, false) => [7, 14],
        _ => NoClasses,
    };

    /// <summary>Id of the limit. <paramref name="netKw"/> decides only where the row has classes of input.</summary>
    public static string LimitId(ClearanceTo to, bool isFanned, decimal netKw)
    {
        var row = $"clearance-{(isFanned ? "fanned" : "natural")}-{Hyphenated(WireText.Of(to))}";
        var classes = InputClasses(to, isFanned);
        if (classes.Count == 0)
            return row;

        return classes.FirstOrDefault(bound => netKw <= bound) is var within and > 0 ? $"{row}-to-{within}" : $"{row}-over-{classes[^1]}";
    }

    private static string Hyphenated(string name) =>
        string.Concat(name.Select(letter => char.IsUpper(letter) ? $"-{char.ToLowerInvariant(letter)}" : $"{letter}"));
}
