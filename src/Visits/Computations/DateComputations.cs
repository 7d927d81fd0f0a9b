using System.Collections.Immutable;
using Calculations;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>Dates of the landlord's check and ages of calibrations. Calendar days; a month's end is kept inside the month.</summary>
public static class DateComputations
{
    private const string Law = "regulation 36A of the Gas Safety (Installation and Use) Regulations 1998, inserted by SI 2018/139";

    private static readonly ComputationInput Previous = Day("previousCountedOn", new DateOnly(2025, 9, 20), "the day on which the previous check counts");
    private static readonly ComputationInput Checked = Day("checkedOn", new DateOnly(2026, 9, 14), "the day of this check, at the earliest two months before the previous one counts");

    private static readonly ImmutableArray<(string, string, Func<InputValues, bool>)> InOrder =
        [("checkedOn", "lies before the previous check could have been made", v => v.Day("checkedOn") >= v.Day("previousCountedOn").AddMonths(-2))];

    /// <summary>Last day for this check.</summary>
    public static readonly Computation LandlordDeadline = new()
    {
        Name = "landlordDeadline",
        What = "last day on which the landlord's check is due",
        Inputs = [Previous],
        Template = "{previousCountedOn} + 12 months",
        Source = Law,
        Day = v => LandlordCalendar.Deadline(v.Day("previousCountedOn")),
    };

    /// <summary>First day of the window.</summary>
    public static readonly Computation LandlordWindowStart = new()
    {
        Name = "landlordWindowStart",
        What = "first day on which an early check counts as made on the deadline",
        Inputs = [Previous],
        Template = "{previousCountedOn} + 12 months - 2 months + 1 day",
        Source = Law,
        Day = v => LandlordCalendar.Against(LandlordCalendar.Deadline(v.Day("previousCountedOn")), v.Day("previousCountedOn")).WindowStart,
    };

    /// <summary>The day on which this check counts.</summary>
    public static readonly Computation LandlordCountedOn = new()
    {
        Name = "landlordCountedOn",
        What = "the day on which this check counts: the deadline for a check within the two months that end with it, else its own day",
        Inputs = [Previous, Checked],
        Template = "the check of {checkedOn} against the deadline of {previousCountedOn} + 12 months",
        Source = Law,
        Demands = InOrder,
        Day = v => LandlordCalendar.Check(v.Day("previousCountedOn"), v.Day("checkedOn")).Deemed,
    };

    /// <summary>Last day for the next check.</summary>
    public static readonly Computation LandlordNextDeadline = new()
    {
        Name = "landlordNextDeadline",
        What = "last day on which the landlord's next check is due",
        Inputs = [Previous, Checked],
        Template = "the day on which the check of {checkedOn} counts, the previous one counting on {previousCountedOn}, + 12 months",
        Source = Law,
        Demands = InOrder,
        Day = v => LandlordCalendar.Check(v.Day("previousCountedOn"), v.Day("checkedOn")).NextDeadline,
    };

    /// <summary>Age of a calibration.</summary>
    public static readonly Computation CalibrationAge = new()
    {
        Name = "calibrationAge",
        What = "days since an instrument was calibrated",
        Inputs = [Day("calibratedOn", new DateOnly(2026, 3, 2), "the day of the calibration"), Day("usedOn", new DateOnly(2026, 9, 14), "the day on which it was used")],
        Unit = "d",
        Template = "{usedOn} - {calibratedOn}",
        Source = "calendar",
        Demands = [("usedOn", "lies before the calibration", v => v.Day("usedOn") >= v.Day("calibratedOn"))],
        Exact = v => v.Day("usedOn").DayNumber - v.Day("calibratedOn").DayNumber,
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } = [LandlordDeadline, LandlordWindowStart, LandlordCountedOn, LandlordNextDeadline, CalibrationAge];
}
