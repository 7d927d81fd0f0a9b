using Findings;
using Kernel;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.LpgBelowGround), Topic(Topics.Ventilation), CommonPractice]
[Title("No boiler on liquefied petroleum gas stands in a cellar or pit, where escaped gas gathers")]
[Why("LPG is heavier than air, so what leaks in a cellar or pit collects at the floor and does not drift away. A pump or switch can set it off before anyone upstairs smells gas.")]
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
