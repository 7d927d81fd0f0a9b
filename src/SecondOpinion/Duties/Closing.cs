using Records;

namespace SecondOpinion.Duties;

/// <summary>As what a job closes that may be closed: as what was carried out.</summary>
internal static class Closing
{
    public static ClosesAs Of(Visit visit, Situation situation, IReadOnlyList<Owed> owed)
    {
        if (visit.IsNothingReached)
            return ClosesAs.Visit;
        var isDeferred = owed.Any(one => one is { Weight: DutyWeight.Must, State: DutyState.Deferred });
        var isCheck = visit.IsCheck && IsExamined(owed);
        if (situation.State < DangerState.PutRight)
            return isCheck ? ClosesAs.Check : situation.State == DangerState.LeftByRefusal && visit.IsRepair && visit.Fitted.Count > 0 ? ClosesAs.Repair : ClosesAs.Visit;
        if (isCheck)
            return ClosesAs.Check;
        if (isDeferred || visit.IsCheck || (visit.IsBrokenOff && visit.IsLeftOff))
            return IsRepaired(visit) ? ClosesAs.Repair : ClosesAs.Visit;
        return visit.Record.JobType switch
        {
            JobType.Commissioning => ClosesAs.Installation,
            JobType.AnnualService => ClosesAs.Service,
            _ => visit.Touched.IsNothing && !IsRepaired(visit) ? ClosesAs.Visit : ClosesAs.Repair,
        };
    }

    /// <summary>Flue, air, pressure or heat input, and safe functioning were all examined.</summary>
    private static bool IsExamined(IReadOnlyList<Owed> owed) => owed
        .Where(one => one.Kind is DutyKind.ExamineAfterWork or DutyKind.SafetyDevices && one.Weight == DutyWeight.Must)
        .All(one => one.State is DutyState.Met or DutyState.ByReason);

    private static bool IsRepaired(Visit visit) => visit.Fitted.Count > 0 || visit.Defects.Any(defect => defect.Action == DefectAction.Rectified);
}
