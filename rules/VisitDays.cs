using Visits;

namespace Rules;

/// <summary>How long what was found after the work still tells how it left the boiler: the law asks for test and examination at once.</summary>
internal static class VisitDays
{
    /// <summary>How many days before the end of the visit <paramref name="day"/> lies, where that is too many; null where it counts.</summary>
    public static int? DaysBeforeItCounts(this Visit visit, DateOnly day) =>
        visit.Date.DayNumber - day.DayNumber is var days && visit.Limits[LimitIds.VisitDays].Allows(days) ? null : days;
}
