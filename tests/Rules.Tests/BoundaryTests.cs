using Findings;

namespace Rules.Tests;

/// <summary>Values just inside, on and just outside every bound that the cases reach, and what no measurement can be.</summary>
public sealed class BoundaryTests
{
    public static TheoryData<string> Names => [.. Boundary.All.Select(boundary => boundary.Name)];

    /// <summary>The others work their number out (a ratio, a share, an area, a number of days), so that no one member carries it: their bounds stand among the written cases.</summary>
    [Fact]
    public void The_rules_whose_limited_number_is_a_member_are_reached()
    {
        Assert.InRange(Boundary.All.Select(boundary => boundary.RuleId).Distinct(StringComparer.Ordinal).Count(), 42, int.MaxValue);
        Assert.InRange(Boundary.All.Count, 115, int.MaxValue);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_outcome_turns_at_the_bound_and_at_no_value_that_is_no_measurement(string name)
    {
        var boundary = Boundary.All.Single(candidate => candidate.Name == name);
        var (inside, on, outside) = (boundary.Answer(boundary.Inside), boundary.Answer(boundary.On), boundary.Answer(boundary.Outside));

        // One step turns the outcome or, where something else has settled that already, the limit that decides; the bound itself is on
        // the side that the limit says.
        Assert.True(outside is null || inside is null || outside.Outcome < inside.Outcome || (outside.Outcome == inside.Outcome && outside.Limit != inside.Limit),
            $"{inside?.Outcome}: {inside?.Message} / {outside?.Outcome}: {outside?.Message}");
        Assert.Equal((boundary.IsExcluded ? outside : inside ?? on)?.Outcome, on?.Outcome);

        // Absent passes only where conforming does: to this limit or, where one more strict decides inside it, to that one.
        Assert.True(boundary.Answer(null)?.Outcome != Outcome.Pass || (inside ?? on)!.Outcome == Outcome.Pass || boundary.MoreStrict(inside).Any(one => one.Answer(one.Inside)?.Outcome == Outcome.Pass),
            boundary.Answer(null)?.Message);

        foreach (var value in new[] { 0m, -boundary.Limit.Resolution, boundary.Member.Minimum!.Value, boundary.Member.Maximum!.Value })
            DemandSense(boundary, value);
        Assert.Null(boundary.Answer(boundary.Member.Minimum - 1));
        Assert.Null(boundary.Answer(boundary.Member.Maximum + 1));
    }

    /// <summary>A value that no member can have is refused with the record; any other is judged, and never passes outside the limit that decides.</summary>
    private static void DemandSense(Boundary boundary, decimal value)
    {
        var answer = boundary.Answer(value);
        Assert.Equal(value < boundary.Member.Minimum || value > boundary.Member.Maximum, answer is null);
        Assert.NotEqual(Outcome.Error, answer?.Outcome);
        if (answer is { Outcome: Outcome.Pass, Margin: { } margin, Limit: { } limit })
            Assert.True(margin > 0 || (margin == 0 && limit.MaxExcluded != true), $"{value} passes: {answer.Message}");
    }
}
