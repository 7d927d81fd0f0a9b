using System.Collections.Concurrent;
using System.Globalization;
using System.Runtime.CompilerServices;
using Wire;

namespace Kernel;

/// <summary>Values as a record writes them, and as a sentence says them: without culture.</summary>
public static class WireText
{
    // Of enumerations alone, so that there are only so many.
    private static readonly ConcurrentDictionary<string, string> SpokenNames = new(StringComparer.Ordinal);

    /// <summary>The value as a record writes it.</summary>
    public static string Of(object value) => value switch
    {
        string text => text,
        bool flag => flag ? "true" : "false",
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        Enum member => WireNames.OfValues(member.GetType())[Convert.ToInt32(member, CultureInfo.InvariantCulture)],
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>The sentence of a verdict: decimals without trailing zeros unless a format says otherwise, days as 14 March 2026, wire names as words.</summary>
    public static string Sentence(FormattableString message)
    {
        ArgumentNullException.ThrowIfNull(message);
        return message.ToString(Words.Instance);
    }

    /// <summary>A sentence that is put together piece by piece, as <see cref="Sentence"/> would.</summary>
    internal static DefaultInterpolatedStringHandler Begin(int literalLength, int formattedCount) => new(literalLength, formattedCount, Words.Instance);

    /// <summary>afterWork is said as "after work", kindU6 as "kind U6"; codes such as XX-ABC stay.</summary>
    private static string Spoken(string wireName) => SpokenNames.GetOrAdd(wireName, static name => Speak(name));

    private static string Speak(string wireName) => wireName.Contains('-', StringComparison.Ordinal)
        ? wireName
        : string.Concat(wireName.Select((letter, at) => at == 0 || !char.IsAsciiLetterUpper(letter) ? $"{letter}"
            : at + 1 < wireName.Length && char.IsAsciiDigit(wireName[at + 1]) ? $" {letter}"
            : $" {char.ToLowerInvariant(letter)}"));

    private sealed class Words : IFormatProvider, ICustomFormatter
    {
        public static readonly Words Instance = new();

        public object? GetFormat(Type? formatType) =>
            formatType == typeof(ICustomFormatter) ? this : CultureInfo.InvariantCulture.GetFormat(formatType);

        public string Format(string? format, object? arg, IFormatProvider? formatProvider) => arg switch
        {
            null => "(not recorded)",
            FormattableString sentence => sentence.ToString(this),
            decimal number => number.ToString(format ?? "0.############", CultureInfo.InvariantCulture),
            DateOnly day => day.ToString(format ?? "d MMMM yyyy", CultureInfo.InvariantCulture),
            IFormattable other and not Enum when format is not null => other.ToString(format, CultureInfo.InvariantCulture),
            Enum member => Spoken(Of(member)),
            _ => Of(arg),
        };
    }
}
