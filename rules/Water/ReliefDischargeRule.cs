using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Water;

[Name(RuleIds.ReliefDischarge), Topic(Topics.Water), Cites("BS-6798"), CommonPractice]
[Description("The relief valve discharges where it can scald nobody")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class ReliefDischargeRule : WaterRule
{
    protected override string SubjectPointer => "/water/reliefDischargeSafe";

    // Looked for at a service; a fault that somebody recorded is judged at any visit.
    protected override bool? Applies(Visit visit) => visit.IsMoreThanALandlordCheck || visit.Record.Water?.ReliefDischargeSafe == false;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.ReliefDischargeSafe, out var isSafe))
            return look.Missing();

        return isSafe
            ? look.Pass($"the relief valve is recorded as discharging where it hurts nobody")
            : look.Unsafe($"the relief valve discharges where it can scald somebody").Warn(Cautions.HotWater)
                .Advise("Run the discharge in metal pipe of the valve's size, falling all the way, to a low visible place outdoors against the wall.");
    }
}
