using System.Globalization;
using System.Text;
using Findings;
using Visits.Computations;
using Wire;

namespace Wording;

/// <summary>How the pages write what JSON carries: numbers, days, units, places and the names of things, in words.</summary>
public static class Say
{
    private const int Digits = 4;

    private static readonly Dictionary<string, string> UnitSigns = new(StringComparer.Ordinal)
    {
        ["1"] = "",
        ["[ppm]"] = "ppm",
        ["Cel"] = "°C",
        ["[cft_i]"] = "ft³",
        ["d"] = "days",
        ["mo"] = "months",
        ["kg/(kW.h)"] = "kg/kWh",
        ["m3/(h.m2)"] = "m³/(h m²)",
        ["kW.h"] = "kWh",
        ["uA"] = "µA",
        ["Ohm"] = "Ω",
        ["MOhm"] = "MΩ",
        ["/h"] = "per hour",
    };

    // How the names of members end that carry a unit, the longest first.
    private static readonly (string Ending, string Sign)[] UnitEndings =
    [
        (" mj per m3", "MJ/m³"), (" c", "°C"), (" kw", "kW"), (" percent", "%"), (" ppm", "ppm"), (" mbar", "mbar"), (" bar", "bar"), (" pa", "Pa"), (" mm", "mm"),
        (" m", "m"), (" m2", "m²"), (" cm2", "cm²"), (" m3", "m³"), (" ft3", "ft³"), (" l", "l"), (" microamps", "µA"), (" ohm", "Ω"), (" megohm", "MΩ"),
    ];

    // What the trade writes in capitals, wherever it stands in a name.
    private static readonly Dictionary<string, string> Abbreviations = new(StringComparer.Ordinal) { ["co"] = "CO", ["co2"] = "CO2", ["o2"] = "O2", ["lpg"] = "LPG" };

    private static readonly Dictionary<string, string> TopicWords = new(StringComparer.Ordinal)
    {
        [Topics.AmbientAir] = "Room air",
        [Topics.GasPressure] = "Gas pressure",
        [Topics.HeatInput] = "Heat input",
        [Topics.HeatExchanger] = "Heat exchanger",
        [Topics.SafetyDevices] = "Safety devices",
        [Topics.CoAlarm] = "CO alarm",
        [Topics.UnsafeSituation] = "Unsafe situation",
    };

    private static readonly Dictionary<string, string> FigureWords = ComputationTable.All.GroupBy(one => one.Name, StringComparer.Ordinal)
        .ToDictionary(group => group.Key, group => group.First().What, StringComparer.Ordinal);

    /// <summary>A number to four significant digits, or all digits of its whole part.</summary>
    public static string Number(decimal value)
    {
        if (value == 0)
            return "0";
        var whole = (int)Math.Floor(Math.Log10((double)Math.Abs(value))) + 1;
        var shown = decimal.Round(value, Math.Clamp(Digits - whole, 0, 28), MidpointRounding.AwayFromZero);
        return shown.ToString("#,0.############################", CultureInfo.InvariantCulture).Replace(',', '\u202f').Replace('-', '\u2212');
    }

    /// <summary>A count.</summary>
    public static string Count(long value) => value.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', '\u202f');

    /// <summary>A share (0 to 1) in per cent.</summary>
    public static string Share(decimal share) => (100 * share).ToString("0.#", CultureInfo.InvariantCulture) + "\u00a0%";

    /// <summary>A number with its unit.</summary>
    public static string Measure(decimal value, string? unit) => Unit(unit) is { Length: > 0 } sign ? $"{Number(value)}\u00a0{sign}" : Number(value);

    /// <summary>The sign of a UCUM unit; empty of a plain number.</summary>
    public static string Unit(string? ucum) => ucum is null ? "" : UnitSigns.GetValueOrDefault(ucum)
        ?? ucum.Replace("m3", "m³", StringComparison.Ordinal).Replace("m2", "m²", StringComparison.Ordinal);

    /// <summary>A day such as 14 September 2026.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A moment in UTC.</summary>
    public static string Moment(DateTimeOffset moment) => moment.UtcDateTime.ToString("d MMMM yyyy, HH:mm", CultureInfo.InvariantCulture) + " UTC";

    /// <summary>A day for machines.</summary>
    public static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A number for machines, every digit of it.</summary>
    public static string Exact(decimal value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>"1 record", "2 records".</summary>
    public static string Of(long count, string one, string? many = null) => $"{Count(count)} {(count == 1 ? one : many ?? one + "s")}";

    /// <summary>A subject area.</summary>
    public static string Topic(string topic) => TopicWords.GetValueOrDefault(topic) ?? Split(topic, capital: true);

    /// <summary>What a figure is, in words.</summary>
    public static string Figure(string name) => Upper(FigureWords.GetValueOrDefault(name) ?? Split(name, capital: true));

    /// <summary>The same as a heading: up to where the explaining begins.</summary>
    public static string FigureHead(string name) => Figure(name).Split([',', ';', ':', '('])[0].TrimEnd();

    /// <summary>An enumeration's value in words.</summary>
    public static string Value(Enum value) => Value(WireNames.Of(value));

    /// <summary>The same of a value as JSON has it: "natural gas" of <c>naturalGas</c>.</summary>
    public static string Value(string wireName) => Split(wireName, capital: false);

    /// <summary>A place in the record, from a JSON Pointer: "combustion, reading 1, CO (ppm)" is nearer to a reader than slashes.</summary>
    public static string Place(string pointer)
    {
        if (pointer.Length == 0)
            return "the whole visit";
        var words = new List<string>();
        foreach (var part in pointer.TrimStart('#', '/').Split('/'))
        {
            if (int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && words.Count > 0)
                words[^1] = string.Create(CultureInfo.InvariantCulture, $"{One(words[^1])} {index + 1}");
            else
                words.Add(WithUnit(Split(part.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal), capital: false)));
        }

        return string.Join(", ", words);
    }

    /// <summary>A text with a capital.</summary>
    public static string Upper(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A sentence: with a capital and a full stop.</summary>
    public static string Sentence(string text) => text.Length == 0 ? "" : Upper(text) + (text[^1] is '.' or '?' or '!' ? "" : ".");

    /// <summary>An id for a place within a page.</summary>
    public static string Anchor(string ruleId, string subject) => ruleId + subject.Replace('/', '.');

    private static string WithUnit(string member) =>
        UnitEndings.FirstOrDefault(unit => member.EndsWith(unit.Ending, StringComparison.Ordinal)) is { Ending: { } ending } found
            ? $"{member[..^ending.Length]} ({found.Sign})" : member;

    private static string One(string many) => many.EndsWith("ies", StringComparison.Ordinal) ? many[..^3] + "y" : many.TrimEnd('s');

    private static string Split(string camelCase, bool capital)
    {
        var words = new StringBuilder();
        foreach (var letter in camelCase)
        {
            if (char.IsUpper(letter) && words.Length > 0)
                words.Append(' ');
            words.Append(char.ToLowerInvariant(letter));
        }

        var text = string.Join(' ', words.ToString().Split(' ').Select(word => Abbreviations.GetValueOrDefault(word, word)));
        return capital ? Upper(text) : text;
    }
}
