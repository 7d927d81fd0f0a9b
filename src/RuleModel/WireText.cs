using System.Globalization;
using ServiceRecords;

namespace RuleModel;

/// <summary>Values as a record writes them, and as a sentence says them: without culture.</summary>
public static class WireText
{
    /// <summary>The value as a record writes it.</summary>
    public static string Of(object value) => value switch
    {
        string text => text,
        bool flag => flag ? "true" : "false",
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        Timestamp moment => moment.Text,
        Enum member => WireNames.OfValues(member.GetType())[Convert.ToInt32(member, CultureInfo.InvariantCulture)],
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>The sentence of a verdict: decimals without trailing zeros unless a format says otherwise, days as 14 March 2026.</summary>
    public static string Sentence(FormattableString message)
    {
        ArgumentNullException.ThrowIfNull(message);
        return message.ToString(Words.Instance);
    }

    private sealed class Words : IFormatProvider, ICustomFormatter
    {
        public static readonly Words Instance = new();

        public object? GetFormat(Type? formatType) =>
            formatType == typeof(ICustomFormatter) ? this : CultureInfo.InvariantCulture.GetFormat(formatType);

        public string Format(string? format, object? arg, IFormatProvider? formatProvider) => arg switch
        {
            null => "",
            FormattableString sentence => sentence.ToString(this),
            decimal number => number.ToString(format ?? "0.############", CultureInfo.InvariantCulture),
            DateOnly day => day.ToString(format ?? "d MMMM yyyy", CultureInfo.InvariantCulture),
            IFormattable other when format is not null => other.ToString(format, CultureInfo.InvariantCulture),
            _ => Of(arg),
        };
    }
}
