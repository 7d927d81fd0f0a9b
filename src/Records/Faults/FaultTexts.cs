using System.Globalization;
using System.Text.Json;
using Records.Members;
using Records.Values;

namespace Records.Faults;

/// <summary>The words of the faults: what was found, what was expected. No word of the program's own types.</summary>
internal static class FaultTexts
{
    public const string NullItem = "A list item cannot be null; leave it out.";
    private const int LongestShown = 60;

    public static string WrongType(string expected, JsonElement found) => $"Expected {expected}, found {Kind(found)}.";

    public static string IsNot(string text, string expected) => $"'{Shown(text)}' is not {expected}.";

    public static string Required(RecordMember member) => $"'{member.Name}' is required: {Expected(member)}. {member.Ask}";

    public static string Duplicate(string name) => $"The object has more than one member '{Shown(name)}'.";

    public static string TooMany(int count, RecordMember member) =>
        string.Create(CultureInfo.InvariantCulture, $"The list has {count} items; at most {member.MaxItems} are read.");

    /// <summary>Names the nearest of the known members, when one is near.</summary>
    public static string UnknownMember(string name, IReadOnlyList<RecordMember> known) =>
        $"The record has no member '{Shown(name)}' here." + (Nearest(name, known) is { } near ? $" Did you mean '{near}'?" : "");

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

    /// <summary>A text from outside, cut to a sane length and without what a terminal would obey.</summary>
    private static string Shown(string text)
    {
        var shown = text.Length > LongestShown ? text[..LongestShown] + "..." : text;
        return string.Concat(shown.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
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

    private static string? Nearest(string name, IReadOnlyList<RecordMember> known)
    {
        if (name.Length is 0 or > LongestShown || known.Count == 0)
        {
            return null;
        }

        // A name cut short, such as co2 for co2Percent, is near whatever the number of letters left out.
        var (nearest, distance) = known
            .Select(m => (m.Name, Distance: m.Name.StartsWith(name, StringComparison.OrdinalIgnoreCase) ? 0 : Distance(name, m.Name)))
            .MinBy(n => n.Distance);
        return distance <= Math.Max(2, name.Length / 3) ? nearest : null;
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
