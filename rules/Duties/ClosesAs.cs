using Findings;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

/// <summary>As what a visit closes: as what was carried out, whatever it set out to be.</summary>
internal static class ClosesAs
{
    public static string Of(Visit visit, IReadOnlyList<Duty> duties, OverallOutcome outcome)
    {
        if (visit.HadNoAccess)
            return "visit";

        var isPutOff = visit.Record.Work?.Result is not (null or WorkResult.CarriedOut)
            || duties.Any(duty => duty is { State: DutyState.Deferred, Weight: Weight.Must });
        var wasExamined = !isPutOff && duties.Any(duty => duty.Kind == "examineAfterWork");
        if (visit.IsALandlordsCheck() && wasExamined)
            return "check";
        if (isPutOff || outcome == OverallOutcome.Unsafe)
            return visit.Record.PartsFitted is { Count: > 0 } || visit.RecordedDefects.Any(defect => defect.Defect.Action == DefectAction.Rectified) ? "repair" : "visit";

        return visit.Record.JobType switch
        {
            JobType.AnnualService => "service",
            JobType.Commissioning => "installation",
            JobType.Repair => "repair",
            _ => "visit",
        };
    }
}
