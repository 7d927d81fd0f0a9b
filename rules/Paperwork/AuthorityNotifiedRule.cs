using Findings;
using Kernel;
using Rules.Jurisdictions;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.AuthorityNotified), Topic(Topics.Paperwork), Cites("BUILDING-REGS-2010", "20(3)")]
[Title("The local authority is notified of a new boiler within 30 days of completion")]
[Why("Under self-certification building control does not come to look, and the notice is how the local authority learns of a new boiler. It is due within 30 days of completion, and a missing one often comes to light only at a sale.")]
[Serves(Part.CommissionPaper)]
[Uses(LimitIds.BuildingNoticeDays)]
[AppliesBy("/commissioning/newBoiler"), InForce(From = "2010-10-01")]
[Coverage(Coverage.Full, "two dates and a term")]
public sealed class AuthorityNotifiedRule : NewBoilerRule
{
    protected override string SubjectPointer => "/paperwork/authorityNotifiedOn";

    protected override bool IsLawHere(Visit visit) => visit.Record.Jurisdiction is Codes.England or Codes.Wales;

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Within("the notice of the new boiler to the local authority", "Notify the authority through the self-certification scheme and note the day.",
            visit.Limits[LimitIds.BuildingNoticeDays], visit.Date,
            look.Note(visit.Record.Paperwork?.AuthorityNotifiedOn), visit);
}
