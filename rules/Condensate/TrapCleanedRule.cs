using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Condensate;

[Id(RuleIds.TrapCleaned), Topic(Topics.Condensate), Cites("BS-6798")]
[Title("The condensate trap is cleaned at each annual service")]
[Why("Debris washed out of the heat exchanger settles in the trap and blocks it. Condensate then backs up into the boiler, which gurgles, locks out or floods its own combustion chamber.")]
[Serves(Part.Trap, AtMost = Weight.Should)]
[Serves(Part.TrapOfService, AtMost = Weight.Should)]
[AppliesBy("/appliance/condensing")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class TrapCleanedRule : VisitRule
{
    protected override string SubjectPointer => "/condensate";

    protected override bool? Applies(Visit visit) => visit.IsAnnualService & visit.Appliance.Condensing;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Condensate?.TrapCleaned, out var cleaned))
            return look.Missing();

        return cleaned
            ? look.Pass($"the condensate trap was cleaned")
            : look.Advisory($"the condensate trap was not cleaned").Advise("Clean the trap after the debris is out of the heat exchanger, and refill it.");
    }
}
