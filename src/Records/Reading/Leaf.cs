using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;
using Records.Faults;
using Records.Members;
using Records.Values;

namespace Records.Reading;

/// <summary>A value without members of its own, read from JSON: the value, or why there is none.</summary>
internal readonly record struct Leaf(object? Value, string Code, string Detail)
{
    public static Leaf Of(JsonElement json, RecordMember member) => (json.ValueKind, member.ClrType) switch
    {
        (JsonValueKind.True or JsonValueKind.False, var type) when type == typeof(bool) => new(json.GetBoolean(), "", ""),
        (JsonValueKind.Number, var type) when type == typeof(decimal) => OfNumber(json),
        (JsonValueKind.String, var type) when !member.IsSection && type != typeof(bool) && type != typeof(decimal) => OfText(JsonText.Of(json), member),
        _ => new(null, FaultCodes.WrongType, FaultTexts.WrongType(FaultTexts.Expected(member), json)),
    };

    private static Leaf OfNumber(JsonElement json) => ExactDecimal.TryParse(JsonMarshal.GetRawUtf8Value(json), out var number)
        ? new(number, "", "")
        : new(null, FaultCodes.NotExact, "The number cannot be held exactly: at most 28 digits, and at most 28 of them after the point.");

    private static Leaf OfText(string? text, RecordMember member)
    {
        if (text is null)
        {
            return new(null, FaultCodes.TextCharacters, "The text has half of a surrogate pair.");
        }

        if (member.ClrType == typeof(string))
        {
            return new(text, "", "");
        }

        if (member.ClrType == typeof(Timestamp))
        {
            return Timestamp.TryParse(text, out var timestamp)
                ? new(timestamp, "", "")
                : new(null, FaultCodes.NotADateTime, FaultTexts.IsNot(text, "a date-time with an offset, such as 2026-09-14T10:25:00+01:00"));
        }

        if (member.ClrType == typeof(DateOnly))
        {
            return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
                ? new(date, "", "")
                : new(null, FaultCodes.NotADate, FaultTexts.IsNot(text, "a day of the calendar, such as 2026-09-14"));
        }

        var index = member.AllowedValues.TakeWhile(v => v != text).Count();
        return index < member.AllowedValues.Count
            ? new(Enum.ToObject(member.ClrType, index), "", "")
            : new(null, FaultCodes.UnknownValue, FaultTexts.IsNot(text, FaultTexts.Expected(member)));
    }
}
