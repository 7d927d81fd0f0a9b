using Findings;
using Kernel;
using Visits;
using Visits.Facts;

namespace Rules.History;

[Id(RuleIds.SameReadings), Topic(Topics.Plausibility), CommonPractice]
[Title("The readings are not, to the last digit, those of the visit before")]
[Why("Gas supplies and flames seldom give the same figures twice to the last digit. Copied readings would hide whatever has changed on the boiler since, and nobody would look for it.")]
[Serves(Part.WhereRecorded)]
[Coverage(Coverage.MayOverReport, "a steady supply and a steady boiler can read alike twice")]
public sealed class SameReadingsRule : VisitRule
{
    // So many values alike are hardly chance; fewer are.
    private const int Pressures = 2;
    private const int FlueValues = 3;

    private static readonly string[] PressureNames =
        [MeasuredNames.MeterStandingMbar, MeasuredNames.MeterOperatingMbar, MeasuredNames.ApplianceInletMbar, MeasuredNames.BurnerMbar];

    private static readonly string[] FlueNames =
        [MeasuredNames.CoPpm, MeasuredNames.Co2Percent, MeasuredNames.O2Percent, MeasuredNames.FlueTemperatureC];

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.DayBefore() is not { } before)
            return look.NotApplicable($"no earlier visit is known");

        var (pressures, flue) = (AreAlike(visit.Facts, before, PressureNames, Pressures), AreAlike(visit.Facts, before, FlueNames, FlueValues));
        if ((pressures ?? flue) is null)
            return look.NotApplicable($"too few values were measured on both visits");

        var alike = (pressures, flue) switch
        {
            (true, true) => "gas pressures and flue readings are",
            (true, _) => "gas pressures are",
            (_, true) => "flue readings are",
            _ => null,
        };
        return alike is null
            ? look.Pass($"the readings differ from those of {before.Date}")
            : look.Advisory($"all {alike} the same to the last digit as on {before.Date}, which is worth a look")
                .Advise("Check that the values were measured on this visit.");
    }

    private static bool? AreAlike(PastVisit now, PastVisit before, string[] names, int enough)
    {
        var both = names.Select(name => (Now: now.Value(name), Before: before.Value(name))).Where(pair => pair is { Now: not null, Before: not null }).ToList();
        return both.Count < enough ? null : both.TrueForAll(pair => pair.Now!.Value == pair.Before!.Value);
    }
}
