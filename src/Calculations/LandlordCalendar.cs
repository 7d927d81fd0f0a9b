namespace Calculations;

/// <summary>
/// Dates of the yearly landlord check: regulation 36A of the Gas Safety (Installation and Use) Regulations 1998 (SI 1998/2451),
/// inserted by SI 2018/139 from 6 April 2018. Calendar dates only; months are added with the day clamped to the end of the month.
/// A check within the two months that end with the deadline counts as made on the deadline; every other check counts on its own date.
/// Evidence of the earlier checks must exist: with none, do not use the window.
/// </summary>
public static class LandlordCalendar
{
    /// <summary>The deadline twelve months after the date on which the previous check counts.</summary>
    public static DateOnly Deadline(DateOnly previousDeemed) => previousDeemed.AddMonths(12);

    /// <summary>Judges a check that follows an earlier one.</summary>
    /// <param name="previousDeemed">The date on which the previous check counts, which may be later than the day it was made.</param>
    /// <param name="checkedOn">The day this check was completed. From two months before <paramref name="previousDeemed"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The check lies before the previous one could have been made.</exception>
    public static LandlordDates Check(DateOnly previousDeemed, DateOnly checkedOn)
    {
        if (checkedOn < previousDeemed.AddMonths(-2))
        {
            throw new ArgumentOutOfRangeException(nameof(checkedOn), checkedOn, "This check lies before the previous one.");
        }

        return Against(Deadline(previousDeemed), checkedOn);
    }

    /// <summary>Judges a check against a known deadline, such as one that <see cref="AlignedFirstDeadline"/> has moved.</summary>
    public static LandlordDates Against(DateOnly deadline, DateOnly checkedOn)
    {
        var twoMonthsBefore = deadline.AddMonths(-2);
        var counted = checkedOn > twoMonthsBefore && checkedOn <= deadline ? deadline : checkedOn;
        return new LandlordDates
        {
            Deadline = deadline,
            WindowStart = twoMonthsBefore.AddDays(1),
            Deemed = counted,
            NextDeadline = Deadline(counted),
            DaysLate = Math.Max(0, checkedOn.DayNumber - deadline.DayNumber),
            Disputed = checkedOn == twoMonthsBefore ? DisputedDay.TwoMonthsBefore
                : checkedOn == deadline ? DisputedDay.LastDay
                : DisputedDay.None,
        };
    }

    /// <summary>
    /// The deadline of a new appliance's first check, moved once to the day on which the other appliances fall due: at most two months
    /// beyond twelve months after installation.
    /// </summary>
    /// <param name="installedOn">The day of installation.</param>
    /// <param name="othersDueOn">The deadline of the other appliances.</param>
    /// <exception cref="ArgumentOutOfRangeException">The other deadline lies outside those two months.</exception>
    public static DateOnly AlignedFirstDeadline(DateOnly installedOn, DateOnly othersDueOn)
    {
        var own = Deadline(installedOn);
        return othersDueOn > own && othersDueOn <= own.AddMonths(2)
            ? othersDueOn
            : throw new ArgumentOutOfRangeException(nameof(othersDueOn), othersDueOn, "Not within two months after the appliance's own deadline.");
    }
}

/// <summary>What one check does to the landlord's calendar.</summary>
public sealed record LandlordDates
{
    /// <summary>Last day on which this check was due.</summary>
    public required DateOnly Deadline { get; init; }

    /// <summary>First day of the two months that end with the deadline, strict reading.</summary>
    public required DateOnly WindowStart { get; init; }

    /// <summary>The date on which this check counts.</summary>
    public required DateOnly Deemed { get; init; }

    /// <summary>Last day on which the next check is due.</summary>
    public required DateOnly NextDeadline { get; init; }

    /// <summary>Days after the deadline; 0 when in time.</summary>
    public required int DaysLate { get; init; }

    /// <summary>Whether the check fell on a day that readers of the regulation count differently: advice, never a verdict.</summary>
    public required DisputedDay Disputed { get; init; }
}

/// <summary>The two days on which careful readers of regulation 36A differ.</summary>
public enum DisputedDay
{
    /// <summary>Not a disputed day.</summary>
    None,

    /// <summary>Exactly two months before the deadline: outside "the 2 months ending with" it, inside "10 months after" (HSE L56).</summary>
    TwoMonthsBefore,

    /// <summary>The same-numbered day twelve months on: in time here, one day late if the year ends on the day before.</summary>
    LastDay,
}
