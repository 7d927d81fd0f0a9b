using Findings;
using Kernel;
using Rules.Jurisdictions;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.BuildingCertificate), Topic(Topics.Paperwork), Cites("BUILDING-REGS-2010", "20(3)")]
[Title("The occupier of a building with a new boiler gets the certificate within 30 days of completion")]
[Why("For the occupier this certificate is evidence, though not conclusive, that the new boiler meets the Building Regulations. The law allows 30 days from completion, and it is commonly asked for when a home is sold.")]
[Serves(Part.CommissionPaper)]
[Uses(LimitIds.BuildingNoticeDays)]
[AppliesBy("/commissioning/newBoiler"), InForce(From = "2010-10-01")]
[Coverage(Coverage.MayUnderReport, "the wording of the certificate is not read")]
public sealed class BuildingCertificateRule : NewBoilerRule
{
    protected override string SubjectPointer => "/paperwork/certificateToOccupierOn";

    protected override bool IsLawHere(Visit visit) => visit.Record.Jurisdiction is Codes.England or Codes.Wales;

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Within("the occupier's building regulations certificate", "Give the certificate to the occupier and note the day.",
            visit.Limits[LimitIds.BuildingNoticeDays], visit.Date,
            look.Note(visit.Record.Paperwork?.CertificateToOccupierOn), visit);
}
