using Findings;
using Kernel;
using Visits;

namespace Rules.GasPressure;

[Id(RuleIds.RegulatorSeal), Topic(Topics.GasPressure), CommonPractice]
[Title("The seal of the pressure regulator is intact")]
[Why("Someone may have changed the setting of a regulator whose seal is broken. The pressure read today may not be the one it holds tomorrow, and every appliance in the house depends on it.")]
[Serves(Part.Regulator)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class RegulatorSealRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/regulatorSealIntact";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.GasSupply?.RegulatorSealIntact, out var intact))
            return look.Missing();

        return intact
            ? look.Pass($"the regulator's seal is intact")
            : look.Unsafe($"the regulator's seal is broken: its setting may have been changed, and the pressure cannot be relied on")
                .ToBeReported(visit).Warn("A regulator that was tampered with can put too much pressure on every appliance.");
    }
}
