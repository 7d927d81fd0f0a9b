using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.ReportInTime), Topic(Topics.UnsafeSituation), Cites("RIDDOR-2013", "11(2)")]
[Title("A dangerous fitting that must be reported is reported within 14 days of knowing of it")]
[Why("Reports tell HSE of bad design, installation or servicing that may put other homes in danger too. RIDDOR allows 14 days from having enough information, and a report after that is late in law.")]
[Serves(Part.HandleDanger)]
[Uses(LimitIds.ReportableDays)]
[InForce(From = "2013-10-01")]
[Coverage(Coverage.Full, "two dates and a term")]
public sealed class ReportInTimeRule : DefectRule
{
    protected override bool Concerns(Defect defect) =>
        defect.Reportable is { Decision: ReportDecision.Yes } or { Decision: null, ReportedOn: not null };

    // Without the day of knowing the visit counts, the earliest day on which the engineer can have known.
    protected override Verdict Assess(Defect defect, Visit visit, Look look) => look.Within(
        "the report of the dangerous fitting to the authority",
        "Report it now, and keep date and method of the report.",
        visit.Limits[LimitIds.ReportableDays],
        look.Note(defect.Reportable?.KnownOn) ?? visit.Date,
        look.Note(defect.Reportable?.ReportedOn),
        visit);
}
