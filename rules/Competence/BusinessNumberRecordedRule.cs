using Findings;
using Kernel;
using Visits;

namespace Rules.Competence;

[Id(RuleIds.BusinessNumberRecorded), Topic(Topics.Competence), Cites("GSIUR-1998", "3(3)"), Cites("GSIUR-1998", "36(3)(c)")]
[Title("The record gives the number under which the business is registered")]
[Why("In homes and most commercial premises the law leaves gas work for gain to businesses on the register. A landlord's record without the registration number also falls short of regulation 36.")]
[Serves(Part.Competence)]
[Coverage(Coverage.MayUnderReport, "whether the number is live on the register is not looked up")]
public sealed class BusinessNumberRecordedRule : VisitRule
{
    protected override string SubjectPointer => "/engineer/businessNumber";

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Engineer?.BusinessNumber, out var number)
            ? look.Missing($"no registration number is recorded, so the record does not show that a registered business did the work")
            : look.Pass($"the business is recorded by registration number {number}");
}
