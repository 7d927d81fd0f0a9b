using Findings;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Wire;

namespace ComplianceApi.Api.Due;

/// <summary>What falls due, as a calendar (RFC 5545): one event a day-long, on the last day for it.</summary>
internal static class DueCalendar
{
    /// <summary>Media type of a calendar.</summary>
    public const string MediaType = "text/calendar";

    /// <summary>The calendar.</summary>
    /// <param name="due">What falls due.</param>
    /// <param name="madeAt">The moment at which it is made, which each event has to carry.</param>
    public static string Of(IEnumerable<DueDate> due, DateTimeOffset madeAt)
    {
        var calendar = new Calendar { ProductId = "-//Compliance checker for gas-boiler service records//Due dates//EN" };
        calendar.Events.AddRange(due.Select(one => EventOf(one, madeAt)));
        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("The calendar could not be written.");
    }

    private static CalendarEvent EventOf(DueDate due, DateTimeOffset madeAt) => new()
    {
        // The same duty keeps its id when its day moves, so that a subscribed calendar moves the event.
        Uid = $"{WireNames.Of(due.Kind)}-{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(due.Key)))}",
        DtStamp = new CalDateTime(madeAt.UtcDateTime),
        Start = new CalDateTime(due.By),
        Summary = $"Due: {Words(due.Kind)}, {Subject(due)}",
        Description = $"Last day, by: {due.Basis}.{(due.WindowFrom is { } from ? $" The two months before the deadline begin on {WireDay(from)}." : "")}",
        Location = due.PremisesReference,
    };

    private static string Words(DueKind kind) => kind switch
    {
        DueKind.AnnualService => "service",
        DueKind.LandlordCheck => "landlord's gas safety check",
        DueKind.Calibration => "calibration",
        DueKind.EngineerCategory => "end of a category of work",
        DueKind.CoAlarmReplacement => "new carbon monoxide alarm",
        DueKind.BeforeUse => "what was left or put off, before the boiler is used again",
        _ => "inhibitor",
    };

    private static string Subject(DueDate due) => due.Kind switch
    {
        DueKind.Calibration => $"{due.Instrument} {due.SerialNumber}",
        DueKind.EngineerCategory => $"engineer {due.LicenceNumber} ({due.Category})",
        _ => string.Join(' ', new[] { due.Maker, due.Model, due.SerialNumber }.OfType<string>()),
    };

    private static string WireDay(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
