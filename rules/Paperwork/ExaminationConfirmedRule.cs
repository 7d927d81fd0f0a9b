using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.ExaminationConfirmed), Topic(Topics.Paperwork), Cites("GSIUR-1998", "26(9)"), Cites("GSIUR-1998", "36(3)(c)")]
[Title("The record confirms that flue, air supply, pressure or heat input, and functioning of this appliance were examined")]
[Why("Work on a boiler can upset its flue, air, gas pressure or safe functioning without any outward sign, so regulation 26(9) has them examined at once. Only the engineer's own confirmation shows that it was done.")]
[Serves(Part.LandlordItems)]
[Serves(Part.Paper, AtMost = Weight.Should)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class ExaminationConfirmedRule : VisitRule
{
    protected override string SubjectPointer => "/paperwork";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Paperwork?.ExaminationConfirmed, out var isConfirmed))
            return look.Missing();

        return isConfirmed
            ? look.Pass($"the examination that must follow work on an appliance is confirmed")
            : look.Missing($"the record states that the examination that must follow work on an appliance is not confirmed; it has to be made at once", "/paperwork/examinationConfirmed")
                .Warn(Cautions.CarbonMonoxide).Advise("Examine flue, combustion air, pressure or heat input, and functioning, then confirm it for this appliance.");
    }
}
