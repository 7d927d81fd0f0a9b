using System.Globalization;
using System.Text;
using System.Text.Json.Serialization;
using Storage;

namespace Jobs.Queue;

/// <summary>One finding of an audit, or one fault of a rejected record, as a row.</summary>
public sealed class FindingRow
{
    /// <summary>The outcome of a row that is a fault.</summary>
    public const string Rejected = AuditLine.Rejected;

    internal const string RejectedGrade = "9";

    /// <summary>Line of the record.</summary>
    public required long Line { get; init; }

    /// <summary>Which of the record's rows it is.</summary>
    [JsonIgnore]
    public int Ordinal { get; init; }

    /// <summary>The caller's id of the record; absent where none could be read.</summary>
    public string? RecordId { get; init => field = Known(value); }

    /// <summary>The caller's reference of the premises; absent where it is not recorded, as all that follows.</summary>
    public string? Premises { get; init => field = Known(value); }

    /// <summary>Day of the visit; absent of a record that was not judged.</summary>
    public DateOnly? VisitedOn { get; init; }

    /// <summary>The same as it is stored.</summary>
    internal string StoredDay
    {
        init => VisitedOn = value.Length > 0 ? Database.DayOf(value) : null;
    }

    /// <summary>Maker of the appliance.</summary>
    public string? Maker { get; init => field = Known(value); }

    /// <summary>Its model.</summary>
    public string? Model { get; init => field = Known(value); }

    /// <summary>Its serial number.</summary>
    public string? SerialNumber { get; init => field = Known(value); }

    /// <summary>The engineer's licence number.</summary>
    public string? Engineer { get; init => field = Known(value); }

    /// <summary>The rule; absent of a fault.</summary>
    public string? RuleId { get; init => field = Known(value); }

    /// <summary>Its subject area; absent of a fault.</summary>
    public string? Topic { get; init => field = Known(value); }

    /// <summary>Sorts by gravity.</summary>
    [JsonIgnore]
    public string Grade { get; init; } = "";

    /// <summary>unsafe, error, missing or advisory; rejected of a fault.</summary>
    public required string Outcome { get; init; }

    /// <summary>What the whole record shows: unsafe, incomplete or advisory; rejected where it was not judged.</summary>
    public required string RecordOutcome { get; init; }

    /// <summary>Of a fault its code, as of a record that is posted on its own; absent of a finding.</summary>
    public string? Code { get; init; }

    /// <summary>JSON Pointer of what is judged; empty for the whole visit.</summary>
    public required string Subject { get; init; }

    /// <summary>One sentence.</summary>
    public required string Message { get; init; }

    /// <summary>The same as it is stored: of a fault with its code before it.</summary>
    internal string StoredMessage
    {
        init => (Code, Message) = Outcome == Rejected && value.Split(": ", 2) is [var code, var detail] ? (code, detail) : (null, value);
    }

    /// <summary>Line of the record of this audit that replaces this one; absent when none does.</summary>
    public long? SupersededBy { get; init; }

    /// <summary>With the code before it where there is one.</summary>
    internal string ToStored() => Code is null ? Message : $"{Code}: {Message}";

    private static string? Known(string? text) => string.IsNullOrEmpty(text) ? null : text;
}

/// <summary>By what rows are sorted; line and place within it come after.</summary>
public enum FindingSort
{
    /// <summary>In the order of the records.</summary>
    Line,

    /// <summary>Gravest first.</summary>
    Outcome,

    /// <summary>By rule.</summary>
    Rule,

    /// <summary>By engineer.</summary>
    Engineer,
}

/// <summary>Which rows, and in what order.</summary>
/// <param name="Outcome">Only of this outcome.</param>
/// <param name="Topic">Only of this subject area.</param>
/// <param name="RuleId">Only of this rule.</param>
/// <param name="Engineer">Only of this engineer.</param>
/// <param name="RecordOutcome">Only of records that show this.</param>
/// <param name="Sort">The order.</param>
public sealed record FindingQuery(string? Outcome, string? Topic, string? RuleId, string? Engineer, string? RecordOutcome, FindingSort Sort);

/// <summary>A place among sorted rows: that of the last row that was given out.</summary>
/// <param name="Sort">The order it belongs to.</param>
/// <param name="Key">What the rows are sorted by.</param>
/// <param name="Line">The line.</param>
/// <param name="Ordinal">The place within it.</param>
public sealed record FindingCursor(FindingSort Sort, string Key, long Line, int Ordinal)
{
    /// <summary>The place of <paramref name="row"/>.</summary>
    public static FindingCursor Of(FindingRow row, FindingSort sort)
    {
        ArgumentNullException.ThrowIfNull(row);
        return new FindingCursor(
            sort,
            sort switch { FindingSort.Outcome => row.Grade, FindingSort.Rule => row.RuleId ?? "", FindingSort.Engineer => row.Engineer ?? "", _ => "" },
            row.Line,
            row.Ordinal);
    }

    /// <summary>As an opaque text.</summary>
    public string ToText() => Convert.ToBase64String(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{Sort}|{Line}|{Ordinal}|{Key}")))
        .TrimEnd('=').Replace('+', '-').Replace('/', '_');

    /// <summary>From such a text; false when it is none.</summary>
    public static bool TryRead(string text, out FindingCursor? cursor)
    {
        cursor = null;
        var bytes = new byte[1000];
        var padded = (text ?? "").Replace('-', '+').Replace('_', '/').PadRight(((text ?? "").Length + 3) / 4 * 4, '=');
        if (!Convert.TryFromBase64String(padded, bytes, out var length))
            return false;
        var parts = Encoding.UTF8.GetString(bytes, 0, length).Split('|', 4);
        if (parts.Length == 4 && Enum.TryParse<FindingSort>(parts[0], out var sort)
            && long.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var line)
            && int.TryParse(parts[2], NumberStyles.None, CultureInfo.InvariantCulture, out var ordinal))
        {
            cursor = new FindingCursor(sort, parts[3], line, ordinal);
        }

        return cursor is not null && cursor.ToText() == text;
    }
}
