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

        // A check of which everything was examined before a danger ended it is a check (36(3)(c)(v), (vi)).
        var isDeferred = visit.Owed.Weights.Any(part => part.Value == Weight.Must && visit.Owed.IsDeferred(part.Key));
        if (visit.IsALandlordsCheck() && !isDeferred && duties.Any(duty => duty.Kind == "examineAfterWork"))
            return "check";
        if (isDeferred || visit.Record.Work?.Result is not (null or WorkResult.CarriedOut) || outcome == OverallOutcome.Unsafe)
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
