using System.Reflection;
using Microsoft.OpenApi;
using Records;
using Records.Metadata;

namespace ComplianceApi.Api.Schemas;

/// <summary>What a record's texts, days and moments may look like, as patterns: the reader and the validators refuse the rest.</summary>
internal static class RecordPatterns
{
    private const string Year = "(19[0-9]{2}|2[01][0-9]{2}|2200)";
    public const string Day = "^" + Year + "-[0-9]{2}-[0-9]{2}$";
    private const string Moment = "^" + Year + @"-[0-9]{2}-[0-9]{2}[Tt]([01][0-9]|2[0-3]):[0-5][0-9]:[0-5][0-9](\.[0-9]{1,24})?([Zz]|\+(0[0-9]|1[0-3]):[0-5][0-9]|\+14:00|-(?!00:00)(0[0-9]|1[0-3]):[0-5][0-9]|-14:00)$";
    public const int LongestName = 100;

    /// <summary>A day, or a moment with an offset of at most 14 hours and no leap second, in the years 1900 to 2200.</summary>
    public static void Bound(OpenApiSchema schema, PropertyInfo property)
    {
        var isMoment = schema.Format == "date-time";
        schema.MaxLength = isMoment ? 50 : 10;
        if (property.DeclaringType!.Assembly == typeof(ServiceRecord).Assembly)
            schema.Pattern = isMoment ? Moment : Day;
    }

    /// <summary>Something else than blanks, and no control character; a long text may have line breaks and tabs.</summary>
    public static string OfText(TextAttribute text)
    {
        var allowed = text.MaxLength > LongestName ? @"[^\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F]" : @"[^\u0000-\u001F\u007F-\u009F]";
        var some = $@"(?=\s*\S){allowed}+";
        return text.MayBeEmpty ? $"^({some})?$" : $"^{some}$";
    }
}
