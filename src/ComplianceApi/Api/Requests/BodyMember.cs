using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;
using ComplianceApi.Api.Schemas;
using Microsoft.OpenApi;
using Records.Faults;
using Records.Metadata;
using Records.Reading;
using Records.Values;

namespace ComplianceApi.Api.Requests;

/// <summary>A member of a body that is no record: declared once, read strictly and documented from that one declaration.</summary>
/// <param name="name">Name in JSON.</param>
/// <param name="schema">Its schema, with what it is as the description.</param>
/// <param name="isRequired">Whether there is nothing to answer without it.</param>
internal abstract class BodyMember(string name, OpenApiSchema schema, bool isRequired)
{
    /// <summary>Most decimals of a number.</summary>
    public const int MostDecimals = 6;

    public string Name { get; } = name;

    public OpenApiSchema Schema { get; } = schema;

    public bool IsRequired { get; } = isRequired;

    /// <summary>The value; null, with a fault added, where it is none.</summary>
    public abstract object? Read(JsonElement json, BodyFaults faults);

    /// <summary>A whole number between two bounds, both included.</summary>
    public static BodyMember<int?> Whole(string name, string description, int min, int max, bool isRequired = false) => new(
        name,
        new OpenApiSchema { Type = JsonSchemaType.Integer, Format = "int32", Minimum = Text(min), Maximum = Text(max), Description = description },
        isRequired,
        (json, place) => NumberOf(json, place, min, max) is { } number
            ? decimal.IsInteger(number) ? (int)number : place.Add<int?>(FaultCodes.WrongType, "Expected a whole number.")
            : null);

    /// <summary>A number between two bounds, both included, with at most <see cref="MostDecimals"/> decimals.</summary>
    public static BodyMember<decimal?> Number(string name, string description, decimal min, decimal max, bool isRequired = false) => new(
        name,
        new OpenApiSchema { Type = JsonSchemaType.Number, Format = "decimal", Minimum = Text(min), Maximum = Text(max), Description = description },
        isRequired,
        (json, place) => NumberOf(json, place, min, max) is { } number
            ? decimal.Round(number, MostDecimals) == number ? number : place.Add<decimal?>(FaultCodes.NotExact, Invariant($"The number may have at most {MostDecimals} decimals."))
            : null);

    /// <summary>One line of text.</summary>
    public static BodyMember<string?> Line(string name, string description, int longest) => new(
        name, TextSchema(description, longest), isRequired: false, (json, place) => TextOf(json, place, longest));

    /// <summary>Lines of text, at least one.</summary>
    public static BodyMember<IReadOnlyList<string>?> Lines(string name, string description, int most, int longest) => new(
        name,
        new OpenApiSchema { Type = JsonSchemaType.Array, Items = TextSchema(description: null, longest), MinItems = 1, MaxItems = most, Description = description },
        isRequired: false,
        (json, place) =>
        {
            if (json.ValueKind != JsonValueKind.Array)
                return place.Add<IReadOnlyList<string>?>(FaultCodes.WrongType, "Expected a list of texts.");
            if (json.GetArrayLength() is var count && (count == 0 || count > most))
                return place.Add<IReadOnlyList<string>?>(count == 0 ? FaultCodes.RequiredMember : FaultCodes.TooManyItems, Invariant($"Expected 1 to {most} items, found {count}."));
            return [.. json.EnumerateArray().Select((item, index) => TextOf(item, place.Item(index), longest) ?? "")];
        });

    /// <summary>A day in the years that a record may speak of.</summary>
    public static BodyMember<DateOnly?> Day(string name, string description) => new(
        name,
        new OpenApiSchema { Type = JsonSchemaType.String, Format = "date", MaxLength = 10, Pattern = RecordPatterns.Day, Description = description },
        isRequired: false,
        (json, place) => json.ValueKind != JsonValueKind.String ? place.Add<DateOnly?>(FaultCodes.WrongType, "Expected a day such as \"2026-09-14\".")
            : CalendarDay.TryParse(JsonText.Of(json), out var day) ? day
            : place.Add<DateOnly?>(FaultCodes.NotADate, $"Expected {CalendarDay.Expected}."));

    /// <summary>A list that something else reads; here it only has to be a list of objects.</summary>
    public static BodyMember<JsonElement?> Objects(string name, string description, string schema, int most) => new(
        name,
        new OpenApiSchema { Type = JsonSchemaType.Array, Items = new OpenApiSchemaReference(schema), MaxItems = most, Description = description },
        isRequired: false,
        (json, place) => json.ValueKind != JsonValueKind.Array ? place.Add<JsonElement?>(FaultCodes.WrongType, "Expected a list.")
            : json.GetArrayLength() > most ? place.Add<JsonElement?>(FaultCodes.TooManyItems, Invariant($"Expected at most {most} items."))
            : json.Clone());

    private static decimal? NumberOf(JsonElement json, BodyFaults place, decimal min, decimal max)
    {
        if (json.ValueKind != JsonValueKind.Number)
            return place.Add<decimal?>(FaultCodes.WrongType, "Expected a number.");
        if (!ExactDecimal.TryParse(JsonMarshal.GetRawUtf8Value(json), out var number))
            return place.Add<decimal?>(FaultCodes.NotExact, "The number cannot be held exactly: at most 28 digits, and at most 28 of them after the point.");
        return number >= min && number <= max ? number : place.Add<decimal?>(FaultCodes.OutOfRange, Invariant($"Expected a number from {min} to {max}."));
    }

    private static string? TextOf(JsonElement json, BodyFaults place, int longest)
    {
        if (json.ValueKind != JsonValueKind.String)
            return place.Add<string?>(FaultCodes.WrongType, "Expected a text.");
        if (JsonText.Of(json) is not { } text || text.Any(char.IsControl))
            return place.Add<string?>(FaultCodes.TextCharacters, "The text has control characters (line breaks and tabs count) or half of a surrogate pair.");
        return !string.IsNullOrWhiteSpace(text) && text.EnumerateRunes().Count() <= longest
            ? text
            : place.Add<string?>(FaultCodes.TextLength, Invariant($"Expected 1 to {longest} characters, not all of them blank."));
    }

    private static OpenApiSchema TextSchema(string? description, int longest) => new()
    {
        Type = JsonSchemaType.String,
        MinLength = 1,
        MaxLength = longest,
        Pattern = RecordPatterns.OfText(new TextAttribute(RecordPatterns.LongestName)),
        Description = description,
    };

    private static string Text<T>(T number) where T : IFormattable => number.ToString(null, CultureInfo.InvariantCulture);

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <inheritdoc />
internal sealed class BodyMember<T>(string name, OpenApiSchema schema, bool isRequired, Func<JsonElement, BodyFaults, T?> read) : BodyMember(name, schema, isRequired)
{
    public override object? Read(JsonElement json, BodyFaults faults) => read(json, faults);

    /// <summary>The value in a body; null where there is none.</summary>
    public T? Of(BodyValues values) => (T?)values.Find(this);
}

/// <summary>The faults of a body, and the place where one is being looked for.</summary>
internal sealed record BodyFaults(List<Fault> All, string Place)
{
    public T? Add<T>(string code, string detail)
    {
        All.Add(new Fault(Place, code, detail));
        return default;
    }

    public BodyFaults Item(int index) => this with { Place = string.Create(CultureInfo.InvariantCulture, $"{Place}/{index}") };
}
