using System.Globalization;
using Xunit.Abstractions;

namespace Calculations.Tests;

/// <summary>Three values from outside for each computation, and an honest list of those that have fewer.</summary>
public class ShortfallTests(ITestOutputHelper output)
{
    private const int Wanted = 3;

    [Fact]
    public void Every_computation_has_three_values_from_outside_or_stands_in_the_list_of_those_that_have_fewer()
    {
        var fewer = Computations.ByName.Keys.ToDictionary(name => name, FromOutside, StringComparer.Ordinal)
            .Where(found => found.Value < Wanted).ToDictionary(StringComparer.Ordinal);
        foreach (var (name, found) in fewer)
            output.WriteLine($"{name}: {found} of {Wanted} values from outside");
        output.WriteLine($"{Computations.ByName.Count - fewer.Count} of {Computations.ByName.Count} computations have {Wanted} or more.");

        Assert.Equal(fewer.OrderBy(pair => pair.Key, StringComparer.Ordinal), Listed().OrderBy(pair => pair.Key, StringComparer.Ordinal));
    }

    [Fact]
    public void Every_computation_has_three_values_of_any_standing() =>
        Assert.All(Computations.ByName.Keys, name => Assert.True(Of(name).Count() >= Wanted, name));

    /// <summary>Values with the same inputs count once; where a library answers while the tests run, every input counts.</summary>
    private static int FromOutside(string name) =>
        Of(name).Where(vector => vector.FromOutside || Oracles.ByName.ContainsKey(name))
            .DistinctBy(vector => string.Join(' ', vector.Inputs), StringComparer.Ordinal).Count();

    private static IEnumerable<Vector> Of(string name) =>
        Vector.All.Where(vector => string.Equals(vector.Computation, name, StringComparison.Ordinal));

    /// <summary>Lines of the form | `name` | found | what was searched |.</summary>
    private static Dictionary<string, int> Listed() =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "vectors", "SHORTFALL.md"))
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .ToDictionary(cells => cells[1].Trim('`'), cells => int.Parse(cells[2], CultureInfo.InvariantCulture), StringComparer.Ordinal);
}
