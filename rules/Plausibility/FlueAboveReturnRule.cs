using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.FlueAboveReturn), Topic(Topics.Plausibility), CommonPractice]
[Title("The flue gas is not colder than the water that cools it")]
[Why("Return water cannot cool flue gas below its own temperature, so a lower figure points to a misplaced probe or to air drawn into the sample. Such air also thins the CO, which then reads lower than it is.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Serves(Part.Water, AtMost = Weight.Should, Of = "/water/returnTemperatureC")]
[Expects("/combustion/readings")]
[Coverage(Coverage.Full, "no flue gas leaves colder than what cools it")]
public sealed class FlueAboveReturnRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.ReadingsAfterWork;

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.FlueTemperatureC, out var flue) | look.Lacks(visit.Record.Water?.ReturnTemperatureC, out var back))
            return look.Missing();

        return flue >= back
            ? look.Pass($"the flue gas at {flue} C is not colder than the return at {back} C")
            : look.Advisory($"the flue gas at {flue} C is colder than the return at {back} C: a reading is wrong, or false air reached the probe")
                .Advise("Check the position of the probe and the sampling point, then read again.");
    }
}
