using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;

namespace ServiceRecords;

/// <summary>The words of the faults: what was found, what was expected. No word of the program's own types.</summary>
internal static class FaultTexts
{
    private const int LongestShown = 60;

    public const string NullItem = "A list item cannot be null; leave it out.";

    public static string WrongType(string expected, JsonElement found) => $"Expected {expected}, found {Kind(found)}.";

    public static string Expected(RecordMember member) => member switch
    {
        { IsSection: true } => "an object",
        { Unit: { } unit } => $"a number in {unit}",
        { AllowedValues.Count: > 0 } => "one of " + string.Join(", ", member.AllowedValues),
        _ when member.ClrType == typeof(bool) => "true or false",
        _ when member.ClrType == typeof(DateOnly) => "a date such as \"2026-09-14\"",
        _ when member.ClrType == typeof(Timestamp) => "a date-time with an offset such as \"2026-09-14T10:25:00+01:00\"",
        _ => "a text",
    };

    public static string Required(RecordMember member) => $"'{member.Name}' is required: {Expected(member)}. {member.Ask}";

    public static string UnknownMember(string name, Section section) =>
        $"The record has no member '{Shown(name)}' here." + Suggestion(name, section.Members.Select(m => m.Name));

    public static string UnknownValue(string text, RecordMember member) =>
        $"{Quoted(text)} is not one of {string.Join(", ", member.AllowedValues)}." + Suggestion(text, member.AllowedValues);

    public static string Quoted(string text) => $"'{Shown(text)}'";

    /// <summary>A text from outside, cut to a sane length and without what a terminal would obey.</summary>
    public static string Shown(string text)
    {
        var shown = text.Length > LongestShown ? text[..LongestShown] + "..." : text;
        return string.Concat(shown.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
    }

    /// <summary>The text; null when it has half of a surrogate pair, which JSON can write and Unicode forbids.</summary>
    public static string? TextOf(JsonElement json)
    {
        try
        {
            return json.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>The member's name; as it was written when it has half of a surrogate pair.</summary>
    public static string NameOf(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException)
        {
            return Encoding.UTF8.GetString(JsonMarshal.GetRawUtf8PropertyName(property));
        }
    }

    private static string Kind(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };

    private static string Suggestion(string text, IEnumerable<string> known)
    {
        if (text.Length > LongestShown)
        {
            return "";
        }

        var (nearest, distance) = known.Select(k => (Name: k, Distance: Distance(text, k))).MinBy(n => n.Distance);
        return distance <= Math.Max(2, text.Length / 3) ? $" Did you mean '{nearest}'?" : "";
    }

    /// <summary>Edits (insert, delete, replace) that lead from one text to the other; case does not count.</summary>
    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = diagonal + (char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
