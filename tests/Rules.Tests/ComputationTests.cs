using Visits.Computations;

namespace Rules.Tests;

/// <summary>The computations as data: whole, and never run outside the ranges of their formulas.</summary>
public sealed class ComputationTests
{
    public static TheoryData<string> Names => [.. ComputationTable.All.Select(computation => computation.Name)];

    private static Dictionary<string, object> ExampleOf(Computation computation) =>
        computation.Inputs.Where(input => input.Name != "co2Percent" || !input.IsOptional).ToDictionary(input => input.Name, input => input.Example, StringComparer.Ordinal);

    [Fact]
    public void Names_are_unique() => Assert.Equal(ComputationTable.All.Count, ComputationTable.All.Select(computation => computation.Name).Distinct().Count());

    [Theory]
    [MemberData(nameof(Names))]
    public void A_computation_runs_on_its_example_and_shows_its_working(string name)
    {
        var computation = ComputationTable.Find(name)!;
        var values = computation.Complete(ExampleOf(computation));

        Assert.Empty(computation.FaultsOf(values));
        Assert.True(computation.NumberOf(values) is not null ^ computation.DayOf(values) is not null);
        Assert.Equal(computation.Unit is null, computation.DayOf(values) is not null);
        Assert.Contains(computation.Unit ?? "1", Units.All);
        Assert.All(computation.Inputs, input => Assert.True(input.Unit is null || Units.All.Contains(input.Unit), input.Name));
        Assert.All(computation.Inputs, input => Assert.Contains(input.Name, computation.Formula, StringComparison.Ordinal));
        Assert.DoesNotContain("{", computation.WorkingOf(values), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void At_every_corner_of_its_ranges_it_runs_or_says_why_not_and_beyond_them_it_says_so(string name)
    {
        const decimal Hair = 0.0000000000000000000001m, Step = 0.0000001m;
        var computation = ComputationTable.Find(name)!;
        foreach (var input in computation.Inputs.Where(input => input.Kind == InputKind.Number))
        {
            foreach (var other in computation.Inputs.Where(other => other.Kind == InputKind.Number))
            {
                foreach (var (at, opposite) in new[] { (input.Min, other.Max), (input.Max, other.Min), (input.Min, other.Min), (input.Max, other.Max), (input.Min + Hair, other.Max), (input.Max - Hair, other.Min) })
                {
                    var given = ExampleOf(computation);
                    given[other.Name] = opposite!.Value;
                    given[input.Name] = at!.Value;
                    var values = computation.Complete(given);
                    if (computation.FaultsOf(values).Count == 0)
                        computation.WorkingOf(values);
                }
            }

            Assert.Contains(computation.FaultsOf(Moved(input.Min!.Value - Step)), fault => fault.Pointer == $"#/{input.Name}");
            Assert.Contains(computation.FaultsOf(Moved(input.Max!.Value + Step)), fault => fault.Pointer == $"#/{input.Name}");

            InputValues Moved(decimal to) => computation.Complete(new Dictionary<string, object>(ExampleOf(computation), StringComparer.Ordinal) { [input.Name] = to });
        }
    }
}
