namespace RuleModel;

/// <summary>What the record says of the visit before this one.</summary>
public static class EarlierVisit
{
    /// <summary>The date on which the previous check counts.</summary>
    public static DateOnly? PreviousCounted(this Visit visit) =>
        visit.Record.PreviousVisit?.DeemedOn ?? visit.Record.PreviousVisit?.FinishedAt?.Date;

    /// <summary>The day on which the appliance was last attended, or installed.</summary>
    public static DateOnly? LastAttended(this Visit visit) =>
        visit.Record.PreviousVisit?.FinishedAt?.Date ?? visit.Record.PreviousVisit?.DeemedOn ?? visit.Appliance.InstalledOn;

    /// <summary>
    /// How the dates of the previous visit contradict each other or this visit; null when they do not. A check counts at most two
    /// months after it was made (regulation 36A).
    /// </summary>
    public static FormattableString? ContradictionOfDates(this Visit visit)
    {
        var madeOn = visit.Record.PreviousVisit?.FinishedAt?.Date;
        return visit.Record.PreviousVisit?.DeemedOn switch
        {
            { } deemed when deemed < madeOn => $"the previous visit counts as made on {deemed}, before it was made on {madeOn}",
            { } deemed when deemed > madeOn?.AddMonths(2) => $"the previous visit of {madeOn} counts as made on {deemed}, more than two months later",
            { } deemed when deemed > visit.Date.AddMonths(2) => $"the previous visit counts as made on {deemed}, more than two months after this one",
            _ => null,
        };
    }
}
