using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.PremisesUseAgrees), Topic(Topics.Plausibility), Cites("GSIUR-1998", "36(2)")]
[Title("Premises that are recorded as owner-occupied have no landlord on the paper and no landlord's check")]
[Why("A landlord on the paper, or a check made for one, shows that the premises are let. Taken for owner-occupied, they are asked for none of what regulation 36 has a landlord see to for the tenant.")]
[Coverage(Coverage.MayUnderReport, "a let home in whose record nobody names a landlord is not seen")]
public sealed class PremisesUseAgreesRule : VisitRule
{
    protected override string SubjectPointer => "/premises/use";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Premises?.Use) is not { } use)
            return look.NotApplicable($"the record does not say how the premises are held");
        if (use != PremisesUse.OwnerOccupied)
            return look.Pass($"the premises are not recorded as owner-occupied");
        if (visit.Record.JobType == JobType.LandlordCheck)
            return Contradicted($"the premises are recorded as owner-occupied, and the visit as a landlord's check");

        var isLandlordNamed = look.Note(visit.Record.Paperwork?.LandlordName) == true | look.Note(visit.Record.Paperwork?.LandlordAddress) == true;
        return isLandlordNamed
            ? Contradicted($"the premises are recorded as owner-occupied, and the paper names a landlord")
            : look.Pass($"the premises are recorded as owner-occupied, and no landlord is named");

        Verdict Contradicted(FormattableString message) => look.Missing(message, look.Subject).Contradicting(Part.Left, Part.LandlordItems)
            .Advise("Ask who owns the premises and who lives there, and put right what is recorded wrongly.");
    }
}
