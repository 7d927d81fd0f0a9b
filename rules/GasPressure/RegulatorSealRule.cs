using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.GasPressure;

[Id(RuleIds.RegulatorSeal), Topic(Topics.GasPressure), Cites("GSIUR-1998", "14(5)")]
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

        if (intact)
            return look.Pass($"the regulator's seal is intact");

        return IsMadeKnown(visit)
            ? look.Advisory($"the regulator's seal is broken, and whoever answers for the supply was told")
                .ToBeReported(visit).Warn("A regulator that was tampered with can put too much pressure on every appliance.")
            : look.Unsafe($"the regulator's seal is broken: its setting may have been changed, and the pressure cannot be relied on")
                .ToBeReported(visit).Warn("A regulator that was tampered with can put too much pressure on every appliance.");
    }

    // The seal of the meter's regulator is for the gas transporter or the supplier to see to: an engineer's word on it is a defect of the supply.
    private static bool IsMadeKnown(Visit visit) => visit.RecordedDefects.Any(recorded =>
        !recorded.IsOfThisAppliance && recorded.Defect is { Concerns: DefectConcern.Supply, Topic: Topics.GasPressure, Told: { } told }
        && (told.Contains(ToldParty.Transporter) || told.Contains(ToldParty.Supplier) || told.Contains(ToldParty.EmergencyService)));
}
