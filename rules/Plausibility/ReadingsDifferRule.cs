using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.ReadingsDiffer), Topic(Topics.Plausibility), CommonPractice]
[Title("A reading at minimum rate is not the reading at maximum rate written twice")]
[Why("Gas and air seldom mix alike at low and high fire, so identical figures usually mean that one was copied from the other. Combustion at the rate that was never measured is then unknown.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Expects("/combustion/readings")]
[Coverage(Coverage.MayOverReport, "two rates may read alike by chance")]
public sealed class ReadingsDifferRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) =>
        visit.ReadingsAfterWork?.Where(reading => reading.Value.Rate != FiringRate.Maximum);

    protected override Verdict WhenNone(Visit visit, Look look) => visit.ReadingsAfterWork!.Any()
        ? look.Pass($"no reading at minimum rate is recorded that could be one at maximum rate")
        : look.NotApplicable($"no reading after the work is recorded");

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.Rate, out _) | look.Lacks(reading.CoPpm, out var co) | look.Lacks(reading.Co2Percent, out var co2))
            return look.Missing();

        var isTwin = visit.ReadingsAfterWork!.Any(other => other.Value is { Rate: FiringRate.Maximum } maximum && maximum.CoPpm == co && maximum.Co2Percent == co2);
        return isTwin
            ? look.Advisory($"{co} ppm CO and {co2} % CO2 are recorded at minimum rate and at maximum rate alike, which hardly happens")
                .Advise("Read again at both rates.")
            : look.Pass($"the readings at minimum and maximum rate differ");
    }
}
