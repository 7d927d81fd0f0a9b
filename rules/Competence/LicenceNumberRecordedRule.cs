using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Competence;

[Name(RuleIds.LicenceNumberRecorded), Topic(Topics.Competence), Cites("GSIUR-1998", "3(1)"), Cites("GSIUR-1998", "3(3)")]
[Description("The record names the engineer by licence number")]
[Coverage(Coverage.MayUnderReport, "whether the number is live on the register is not looked up")]
public sealed class LicenceNumberRecordedRule : VisitRule
{
    protected override string SubjectPointer => "/engineer/licenceNumber";

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Engineer?.LicenceNumber, out var number)
            ? look.Missing($"no licence number is recorded, so nobody can tell who did the work")
            : look.Pass($"the engineer is recorded by licence number {number}");
}
