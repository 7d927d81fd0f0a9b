using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.RepeatedReadingsAgree), Topic(Topics.Plausibility), CommonPractice]
[Title("Readings that were taken twice at one rate after the work agree")]
[Why("Readings of CO2 that wander at one rate point to a boiler still warming up, a loose probe or an unsteady burner. A figure caught on the way may not be where the boiler settles.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Uses(LimitIds.RepeatedReadingDeviation)]
[Expects("/combustion/readings")]
[Coverage(Coverage.MayOverReport, "an adjustment between two readings sets them apart")]
public sealed class RepeatedReadingsAgreeRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.ReadingsAfterWork;

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.Rate, out var rate) | look.Lacks(reading.Co2Percent, out var co2))
            return look.Missing();

        var most = visit.ReadingsAfterWork!.Where(other => other.Value.Rate == rate).Max(other => other.Value.Co2Percent ?? 0m);
        if (most == 0)
            return look.Missing($"a flue gas without CO2 is no reading of a burning boiler", $"{look.Subject}/co2Percent");

        var limit = visit.Limits[LimitIds.RepeatedReadingDeviation];
        var apart = 100m * (most - co2) / most;
        return limit.Allows(apart)
            ? look.Pass($"at {rate} rate the readings of CO2 lie {apart:0.#} % apart, at most {limit.Max} %").Against(limit, apart)
            : look.Advisory($"{co2} % CO2 and {most} % CO2 are recorded at {rate} rate, {apart:0.#} % apart, more than {limit.Max} %").Against(limit, apart)
                .Advise("Let the boiler settle and read again until two readings agree.");
    }
}
