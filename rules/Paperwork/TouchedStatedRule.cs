using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.TouchedStated), Topic(Topics.Paperwork), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Title("A repair says what was worked on, and no service that was carried out says that nothing was")]
[Why("What was opened decides what has to be proved afterwards: a gas joint, the flue, the combustion circuit. Where nobody says what was touched, a joint that was opened can leave the house untested.")]
[Coverage(Coverage.MayUnderReport, "what was touched and is not stated shows only by its traces")]
public sealed class TouchedStatedRule : VisitRule
{
    protected override string SubjectPointer => "/work/touched";

    protected override bool? Applies(Visit visit) => !visit.HadNoAccess && visit.Record.JobType is JobType.Repair or JobType.AnnualService;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.Record.JobType == JobType.Repair && visit.Record.Work?.Touched is null)
            return look.Missing($"the record of this repair does not say what was worked on", "/work/touched");

        // A service that says nothing of its result was carried out.
        return visit.IsAnnualService && visit.Record.Work is { Touched.Count: 0, Result: null or WorkResult.CarriedOut }
            ? look.Missing($"the service was carried out, and the record says that nothing was worked on", "/work/touched")
            : look.Pass($"what was worked on is stated, or follows from the rest of the record");
    }
}
