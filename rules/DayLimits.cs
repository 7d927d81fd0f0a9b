using System.Globalization;
using Findings;
using Kernel;
using Visits;

namespace Rules;

/// <summary>Duties to be done within some days of an event. Late is advice, since nobody can undo it today; not yet due is a pass with a date.</summary>
internal static class DayLimits
{
    /// <summary>A number of days in words.</summary>
    public static string Days(int count) => count == 1 ? "1 day" : string.Create(CultureInfo.InvariantCulture, $"{count} days");

    /// <summary>Judges one such duty.</summary>
    /// <param name="look">The look of the rule.</param>
    /// <param name="what">The duty, as the subject of a sentence.</param>
    /// <param name="remedy">The work that does it, where it is not done.</param>
    /// <param name="limit">Days allowed.</param>
    /// <param name="from">The day of the event.</param>
    /// <param name="doneOn">The day on which it was done; null: not on record.</param>
    /// <param name="visit">For the day from which deadlines are seen.</param>
    public static Verdict Within(this Look look, string what, string remedy, Limit limit, DateOnly from, DateOnly? doneOn, Visit visit)
    {
        var last = DateOnly.FromDayNumber(Math.Min(from.DayNumber + (int)limit.Max!.Value, DateOnly.MaxValue.DayNumber));
        if (doneOn is not { } day)
        {
            return visit.LookedAtOn <= last
                ? look.Pass($"{what} is due by {last}").Against(limit).DueBy(last, what)
                : look.Advisory($"{what} was due by {last}, {Days(visit.LookedAtOn.DayNumber - last.DayNumber)} ago, and is not on record").Against(limit).Advise(remedy);
        }

        var days = day.DayNumber - from.DayNumber;
        if (days < 0)
            return look.Advisory($"{what} is dated {day}, before {from} from which it counts, so it shows nothing").Advise(remedy);

        return limit.Allows(days)
            ? look.Pass($"{what} is dated {day}, {Days(days)} on, at most {limit.Max}").Against(limit, days)
            : look.Advisory($"{what} is dated {day}, {Days(days)} on, at most {limit.Max}: {Days(day.DayNumber - last.DayNumber)} late").Against(limit, days);
    }
}
