using Findings;
using Kernel;
using Visits;

namespace Rules.Competence;

[Id(RuleIds.LicenceNumberRecorded), Topic(Topics.Competence), Cites("GSIUR-1998", "3(1)"), Cites("GSIUR-1998", "3(3)")]
[Title("The record names the engineer by licence number")]
[Why("Names are shared and signatures are hard to read, but a licence number points to one engineer. With it a householder, landlord or auditor can ask whether that person was registered for the work.")]
[Serves(Part.Competence)]
[Coverage(Coverage.MayUnderReport, "whether the number is live on the register is not looked up")]
public sealed class LicenceNumberRecordedRule : VisitRule
{
    protected override string SubjectPointer => "/engineer/licenceNumber";

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Engineer?.LicenceNumber, out var number)
            ? look.Missing($"no licence number is recorded, so nobody can tell who did the work")
            : look.Pass($"the engineer is recorded by licence number {number}");
}
