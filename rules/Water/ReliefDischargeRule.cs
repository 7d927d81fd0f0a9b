using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Water;

[Id(RuleIds.ReliefDischarge), Topic(Topics.Water), Cites("BS-6798"), CommonPractice]
[Title("The relief valve discharges where it can scald nobody")]
[Why("Relief valves lift without warning and let out water that can be near boiling. A discharge over a path, in a cupboard or at face height scalds whoever happens to be there.")]
[Serves(Part.ReliefValve, AtMost = Weight.Should)]
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
