using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.SystemTypeAgrees), Topic(Topics.Plausibility), CommonPractice]
[Title("A system that is recorded as open-vented has neither a vessel pre-charge nor a cold fill pressure")]
[Why("An open-vented system stands open to the air, so it has no vessel to charge and no pressure to fill to. Taken for one, a sealed system is asked nothing of its relief valve, which is what keeps it from bursting.")]
[Coverage(Coverage.MayUnderReport, "an open-vented system that is taken for a sealed one is not seen")]
public sealed class SystemTypeAgreesRule : VisitRule
{
    protected override string SubjectPointer => "/water/systemType";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Water?.SystemType) is not { } type)
            return look.NotApplicable($"the record does not say whether the system is sealed or open-vented");
        if (type != WaterSystemType.OpenVented)
            return look.Pass($"the system is recorded as sealed");

        return (look.Note(visit.Record.Water?.VesselPrechargeBar), look.Note(visit.Record.Water?.ColdFillBar)) switch
        {
            ({ } precharge, _) => Contradicted($"the system is recorded as open-vented, and a vessel pre-charge of {precharge} bar beside it"),
            (_, { } coldFill) => Contradicted($"the system is recorded as open-vented, and a cold fill pressure of {coldFill} bar beside it"),
            _ => look.Pass($"the system is recorded as open-vented, and no pressure of a sealed one beside it"),
        };

        Verdict Contradicted(FormattableString message) => look.Missing(message, look.Subject).Contradicting(Part.SealedSystem)
            .Advise("See whether the system has a vessel or an open vent, and put right what is recorded wrongly.");
    }
}
