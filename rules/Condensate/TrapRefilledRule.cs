using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Condensate;

[Id(RuleIds.TrapRefilled), Topic(Topics.Condensate), Cites("BS-6798"), CommonPractice]
[Title("The condensate trap is filled again: a dry trap lets products out")]
[Why("An empty trap lets flue gas out into the room through the condensate pipe. Cleaning empties it, and nothing on the front of the boiler shows that it was left dry.")]
[Serves(Part.Trap)]
[Serves(Part.TrapOfService)]
[Uses(LimitIds.AmbientCo)]
[AppliesBy("/appliance/condensing")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class TrapRefilledRule : VisitRule
{
    protected override string SubjectPointer => "/condensate";

    protected override bool? Applies(Visit visit) =>
        visit.Record.Condensate?.TrapRefilled == false ? true : visit.Appliance.Condensing;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Condensate?.TrapRefilled, out var refilled))
            return look.Missing();

        // One of the two is wrong; there may be a trap, and then it is dry.
        if (!refilled && look.Note(visit.Record.Appliance.Condensing) == false)
        {
            return look.Missing($"the condensate trap is recorded as left dry, and the boiler as one that does not condense", "/appliance/condensing", "/condensate/trapRefilled")
                .Warn(Cautions.CarbonMonoxide).Advise("Correct the record; where there is a trap, fill it with water before the boiler runs.");
        }

        return refilled
            ? look.Pass($"the condensate trap was filled again")
            : look.Unsafe($"the condensate trap was left dry", look.ClassOfEscapingProducts(visit))
                .Warn(Cautions.CarbonMonoxide).Advise("Fill the trap with water before the boiler runs, and see that it holds.");
    }
}
