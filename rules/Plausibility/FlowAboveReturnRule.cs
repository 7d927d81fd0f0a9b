using Findings;
using Kernel;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.FlowAboveReturn), Topic(Topics.Plausibility), CommonPractice]
[Title("The flow of the running boiler is not colder than its return")]
[Why("Water leaves a firing boiler hotter than it came back, so the reverse means swapped readings, swapped pipes or a burner that was out. Whether the boiler condenses and has flow enough is judged from this pair.")]
[Serves(Part.Water, AtMost = Weight.Should)]
[Coverage(Coverage.Full, "no running boiler cools its water")]
public sealed class FlowAboveReturnRule : VisitRule
{
    protected override string SubjectPointer => "/water";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.FlowTemperatureC, out var flow) | look.Lacks(visit.Record.Water?.ReturnTemperatureC, out var back))
            return look.Missing();

        return flow >= back
            ? look.Pass($"the flow of {flow} C is not colder than the return of {back} C")
            : look.Advisory($"the flow of {flow} C is colder than the return of {back} C: the two are mixed up, or the boiler was not firing")
                .Advise("Read both again with the boiler firing.");
    }
}
