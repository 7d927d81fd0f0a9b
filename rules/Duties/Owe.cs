using Findings;
using Kernel;
using Visits;

namespace Rules.Duties;

/// <summary>What a rule calls for, by the weight of silence about it.</summary>
internal static class Owe
{
    /// <summary>Law, or nobody could otherwise exclude a danger.</summary>
    public static Call<Visit> Must(params IReadOnlyList<string> parts) => new(Weight.Must, parts);

    /// <summary>Good practice.</summary>
    public static Call<Visit> Should(params IReadOnlyList<string> parts) => new(Weight.Should, parts);

    /// <summary>What cannot be seen on this visit, and is put off until the boiler is used again.</summary>
    public static Call<Visit> Later(IReadOnlyList<string> parts) => new(weight: null, parts);
}
