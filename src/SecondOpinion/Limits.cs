using System.Text.Json;
using Records;

namespace SecondOpinion;

/// <summary>The bounds of a limit that apply to one visit.</summary>
internal sealed record Bounds(decimal? Min, decimal? Max, bool MaxExcluded, decimal Resolution)
{
    public bool Holds(decimal value) => !(value < Min) && !(MaxExcluded ? value >= Max : value > Max);
}

/// <summary>limits.json, read without the help of the service's own reader.</summary>
internal static class Limits
{
    private static readonly IReadOnlyList<JsonElement> Rows = Read();
    private static readonly ILookup<string, JsonElement> RowsById = Rows.ToLookup(row => row.GetProperty("id").GetString()!, StringComparer.Ordinal);

    /// <summary>Every line's id, unit and bounds.</summary>
    public static IEnumerable<(string Id, string Unit, Bounds Bounds)> All =>
        Rows.Select(row => (row.GetProperty("id").GetString()!, row.GetProperty("unit").GetString()!, BoundsOf(row)));

    /// <summary>The bounds in force, null where none apply to this fuel, nation and day; without a fuel, where none apply to every fuel.</summary>
    /// <exception cref="InvalidOperationException">No line has this id, or two apply.</exception>
    public static Bounds? Find(string id, Fuel? fuel, string jurisdiction, DateOnly day)
    {
        if (!RowsById.Contains(id))
            throw new InvalidOperationException($"limits.json has no '{id}'.");

        var row = RowsById[id].SingleOrDefault(line =>
            Lists(line, "fuels", fuel is { } gas ? Name(gas) : "") && Lists(line, "jurisdictions", jurisdiction)
            && !(Day(line, "inForceFrom") > day) && !(day > Day(line, "inForceTo")));
        return row.ValueKind == JsonValueKind.Undefined ? null : BoundsOf(row);
    }

    private static Bounds BoundsOf(JsonElement row) => new(
        Number(row, "min"), Number(row, "max"),
        row.TryGetProperty("maxExcluded", out var excluded) && excluded.GetBoolean(),
        Number(row, "resolution")!.Value);

    private static bool Lists(JsonElement row, string member, string value) =>
        !row.TryGetProperty(member, out var list) || list.EnumerateArray().Any(item => item.GetString() == value);

    private static DateOnly? Day(JsonElement row, string member) =>
        row.TryGetProperty(member, out var day) ? DateOnly.Parse(day.GetString()!, System.Globalization.CultureInfo.InvariantCulture) : null;

    private static decimal? Number(JsonElement row, string member) =>
        row.TryGetProperty(member, out var number) ? number.GetDecimal() : null;

    private static string Name<T>(T value) => JsonSerializer.SerializeToElement(value).GetString()!;

    private static List<JsonElement> Read()
    {
        using var table = typeof(Limits).Assembly.GetManifestResourceStream("limits.json")!;
        using var file = JsonDocument.Parse(table);
        return [.. file.RootElement.EnumerateArray().Select(row => row.Clone())];
    }
}
