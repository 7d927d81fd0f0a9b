using System.Globalization;
using System.Text.Json.Nodes;
using ComplianceApi.Api.Schemas;
using Microsoft.OpenApi;
using Records.Values;
using Wire;

namespace ComplianceApi.Api.Requests;

/// <summary>Makes query parameters.</summary>
public static class Query
{
    /// <summary>The greatest whole number that every reader of JSON holds exactly (RFC 8259, section 6).</summary>
    private const long MostExact = (1L << 53) - 1;

    /// <summary>One value of an enumeration by its exact wire name, with a value for when it is absent.</summary>
    public static QueryParameter<T> OneOf<T>(string name, string description, T absent) where T : struct, Enum =>
        OneOf(name, description, absent, [.. Enum.GetValues<T>().Select(value => (WireNames.Of(value), value))]);

    /// <summary>One value of an enumeration by its exact wire name, or none.</summary>
    public static QueryParameter<T?> OneOfOrAny<T>(string name, string description) where T : struct, Enum =>
        OneOf(name, description, default(T?), [.. Enum.GetValues<T>().Select(value => (WireNames.Of(value), (T?)value))]);

    /// <summary>One of some words, or none.</summary>
    public static QueryParameter<string?> Word(string name, string description, IReadOnlyList<string> words) =>
        OneOf(name, description, null, [.. words.Select(word => (word, (string?)word))]);

    /// <summary>One of those whose law the rules hold.</summary>
    public static QueryParameter<string> Jurisdiction(string description, string absent) =>
        OneOf("jurisdiction", description, absent, [.. ShippedRules.Jurisdictions.Select(place => (place.Code, place.Code))], ValueSets.Jurisdiction);

    /// <summary>One of those whose law the rules hold, or none.</summary>
    public static QueryParameter<string?> JurisdictionOrAny(string description) =>
        OneOf("jurisdiction", description, null, [.. ShippedRules.Jurisdictions.Select(place => (place.Code, (string?)place.Code))], ValueSets.Jurisdiction);

    /// <summary>true or false.</summary>
    public static QueryParameter<bool> Flag(string name, string description, bool absent) =>
        new(name, description, absent, (string text, out bool value) =>
        {
            value = text == "true";
            return value || text == "false";
        })
        {
            Expected = "true or false",
            Schema = new OpenApiSchema { Type = JsonSchemaType.Boolean, Default = JsonValue.Create(absent) },
        };

    /// <summary>true, false or neither.</summary>
    public static QueryParameter<bool?> FlagOrAny(string name, string description) =>
        new(name, description, null, (string text, out bool? value) =>
        {
            value = text == "true";
            return value == true || text == "false";
        })
        {
            Expected = "true or false",
            Schema = new OpenApiSchema { Type = JsonSchemaType.Boolean },
        };

    /// <summary>A whole number between two bounds, both included; null where it is absent and has no <paramref name="absent"/>.</summary>
    public static QueryParameter<int?> Whole(string name, string description, int min, int max, int? absent = null) =>
        new(name, description, absent, (string text, out int? value) =>
        {
            value = int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
            return value >= min && value <= max;
        })
        {
            Expected = string.Create(CultureInfo.InvariantCulture, $"a whole number from {min} to {max}"),
            Schema = new OpenApiSchema
            {
                Type = JsonSchemaType.Integer,
                Format = "int32",
                Minimum = min.ToString(CultureInfo.InvariantCulture),
                Maximum = max.ToString(CultureInfo.InvariantCulture),
                Default = absent is { } number ? JsonValue.Create(number) : null,
            },
        };

    /// <summary>A day.</summary>
    public static QueryParameter<DateOnly?> Day(string name, string description) =>
        new(name, description, null, (string text, out DateOnly? value) =>
        {
            value = CalendarDay.TryParse(text, out var day) ? day : null;
            return value is not null;
        })
        {
            Expected = CalendarDay.Expected,
            Schema = new OpenApiSchema { Type = JsonSchemaType.String, Format = "date", MaxLength = 10 },
        };

    /// <summary>A moment with its offset.</summary>
    public static QueryParameter<DateTimeOffset?> Moment(string name, string description) =>
        new(name, description, null, (string text, out DateTimeOffset? value) =>
        {
            value = Timestamp.TryParse(text, out var moment) ? moment.Value : null;
            return value is not null;
        })
        {
            Expected = "a date-time with its offset such as 2026-09-14T10:25:00Z",
            Schema = new OpenApiSchema { Type = JsonSchemaType.String, Format = "date-time", MaxLength = 50 },
        };

    /// <summary>A number that this service gave; null where it is absent.</summary>
    public static QueryParameter<long?> Number(string name, string description) =>
        new(name, description, null, (string text, out long? value) =>
        {
            value = long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
            return value <= MostExact;
        })
        {
            Expected = "a number that an earlier answer gave, or 0",
            Schema = new OpenApiSchema { Type = JsonSchemaType.Integer, Format = "int64", Minimum = "0", Maximum = MostExact.ToString(CultureInfo.InvariantCulture) },
        };

    /// <summary>A place in a list.</summary>
    public static QueryParameter<int> Cursor(string name, string description) => new(name, description, 0, Paging.TryPosition)
    {
        Expected = "the value of next in an earlier answer",
        Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = 16 },
    };

    /// <summary>A text that means something only to this service or to the caller.</summary>
    public static QueryParameter<string?> Opaque(string name, string description) => new(name, description, null, (string text, out string? value) =>
    {
        value = text;
        return text.Length is > 0 and <= 200 && !text.Any(char.IsControl);
    })
    {
        Expected = "1 to 200 characters",
        Schema = AnyText,
    };

    /// <summary>A month of the calendar.</summary>
    public static QueryParameter<string?> Month(string name, string description) => new(name, description, null, (string text, out string? value) =>
    {
        value = text;
        return DateOnly.TryParseExact(text, "yyyy-MM", CultureInfo.InvariantCulture, DateTimeStyles.None, out _);
    })
    {
        Expected = "a month such as 2026-09",
        Schema = AnyText,
    };

    /// <summary>The id of the last item of the part before.</summary>
    public static QueryParameter<string?> After(string name, string description) => new(name, description, null, (string text, out string? value) =>
    {
        value = text;
        return Guid.TryParseExact(text, "D", out _);
    })
    {
        Expected = "the value of next in an earlier answer",
        Schema = AnyText,
    };

    /// <summary>A place in a list whose items come and go.</summary>
    public static QueryParameter<T?> Place<T>(string name, string description, TryRead<T?> tryRead) where T : class => new(name, description, null, tryRead)
    {
        Expected = "the value of next in an earlier answer",
        Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = 1000 },
    };

    private static OpenApiSchema AnyText => new() { Type = JsonSchemaType.String, MinLength = 1, MaxLength = 200 };

    private static QueryParameter<T> OneOf<T>(string name, string description, T absent, IReadOnlyList<(string Name, T Value)> values, string? valueSet = null) =>
        new(name, description, absent, (string text, out T value) =>
        {
            var found = values.FirstOrDefault(pair => pair.Name == text);
            value = found.Value;
            return found.Name is not null;
        })
        {
            Expected = "one of " + string.Join(", ", values.Select(pair => pair.Name)),
            ValueSet = valueSet,
            Enumeration = (Nullable.GetUnderlyingType(typeof(T)) ?? typeof(T)) is { IsEnum: true } type ? type : null,
            Schema = new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                Enum = [.. values.Select(pair => (JsonNode)JsonValue.Create(pair.Name))],
                Default = values.FirstOrDefault(pair => Equals(pair.Value, absent)).Name is { } known ? JsonValue.Create(known) : null,
            },
        };
}
