using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.FlueEffective), Topic(Topics.Flue), Cites("GSIUR-1998", "26(9)(a)")]
[Title("The flue is confirmed to work, over its whole route")]
[Why("A flue that nobody can confirm may be emptying into a loft, a void or the flat next door. Its effectiveness has by law to be examined after any work on the appliance, not taken on trust.")]
[AlsoRecordedAt("/ambientCo", "/flue/visualOk", "/flue/spillageTestPassed", "/flue/flowTestPassed", "/flue/effectivenessConfirmed")]
[Serves(Part.FlueEffective)]
[Serves(Part.Flue, AtMost = Weight.Should, Of = "/flue/wholeRouteSeen")]
[Uses(LimitIds.AmbientCo)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class FlueEffectiveRule : VisitRule
{
    protected override string SubjectPointer => "/flue";

    protected override Verdict Assess(Visit visit, Look look)
    {
        var lacks = look.Lacks(visit.Record.Flue?.EffectivenessConfirmed, out _) | look.Lacks(visit.Record.Flue?.WholeRouteSeen, out var seen);
        if (visit.Record.Flue?.EffectivenessConfirmed == false)
        {
            return look.Unsafe($"the flue could not be confirmed to work", look.ClassOfEscapingProducts(visit))
                .Warn(Cautions.CarbonMonoxide).Advise("Turn the boiler off with permission until the whole flue can be examined.");
        }

        if (lacks)
            return look.Missing();

        return seen
            ? look.Pass($"the flue was seen over its whole route and confirmed to work")
            : look.Advisory($"the flue was confirmed to work, though not seen over its whole route")
                .Warn(Cautions.CarbonMonoxide).Advise("Find a way to see the rest of the flue, or record how it was confirmed without.");
    }
}
