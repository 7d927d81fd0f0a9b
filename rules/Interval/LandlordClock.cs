using Calculations;
using Visits;

namespace Rules.Interval;

/// <summary>The landlord's calendar as the law stood on the day of the visit.</summary>
internal static class LandlordClock
{
    // Regulation 36A, inserted by SI 2018/139.
    private static readonly DateOnly WindowInForceFrom = new(2018, 4, 6);

    /// <summary>Does an early check count as made on the deadline? By regulation 36A, and with evidence of an earlier check.</summary>
    public static bool HasWindow(Visit visit) => visit.PreviousCounted() is not null && visit.AsOf >= WindowInForceFrom;

    /// <summary>
    /// This check against its deadline; null when neither an earlier check nor the installation is dated. Without evidence of an earlier
    /// check, and before regulation 36A, a check counts on its own date.
    /// </summary>
    public static LandlordDates? Against(Visit visit)
    {
        if ((visit.PreviousCounted() ?? visit.Appliance.InstalledOn) is not { } from)
            return null;

        var dates = LandlordCalendar.Against(LandlordCalendar.Deadline(from), visit.Date);
        return HasWindow(visit)
            ? dates
            : dates with { Deemed = visit.Date, NextDeadline = LandlordCalendar.Deadline(visit.Date), Disputed = DisputedDay.None };
    }
}
