using Findings;
using Kernel;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.LpgBelowGround), Topic(Topics.Ventilation), Cites("GSIUR-1998", "6(8)(b)")]
[Title("No boiler on liquefied petroleum gas stands in a cellar or basement, where escaped gas gathers")]
[Why("LPG is heavier than air, so what leaks in a cellar or basement collects at the floor and does not drift away. The law bars whoever installs from putting one there that lights itself or has a pilot; a pump or switch can set the gas off before anyone upstairs smells it.")]
[Serves(Part.Air)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class LpgBelowGroundRule : VisitRule
{
    protected override string SubjectPointer => "/premises";

    protected override bool? Applies(Visit visit) => !visit.BurnsNaturalGas;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Premises?.BelowGround, out var isBelow))
            return look.Missing();

        return isBelow
            ? look.Unsafe($"a boiler on {visit.Fuel} stands below ground, where escaped gas gathers")
                .Warn(Cautions.EscapingGas).Advise("Turn the boiler off with permission; it needs another place or another fuel.")
            : look.Pass($"the boiler on {visit.Fuel} does not stand below ground");
    }
}
