using System.Collections.Concurrent;
using Findings;
using ServiceRecords;

namespace RuleModel;

/// <summary>Every limit with where and when it applies.</summary>
public sealed class LimitBook(IReadOnlyList<LimitDefinition> definitions)
{
    private readonly DateOnly[] _changes =
        [.. definitions.SelectMany(line => new[] { line.InForceFrom, line.InForceTo?.AddDays(1) }).OfType<DateOnly>().Distinct().Order()];

    private readonly ConcurrentDictionary<(Fuel, Jurisdiction, DateOnly), LimitSheet> _sheets = new();

    /// <summary>All lines.</summary>
    public IReadOnlyList<LimitDefinition> Definitions { get; } = definitions;

    /// <summary>The limits in force for one visit.</summary>
    public LimitSheet For(Fuel fuel, Jurisdiction jurisdiction, DateOnly day) => _sheets.GetOrAdd(
        (fuel, jurisdiction, DayOfLastChange(day)), key => new LimitSheet(Definitions.Where(line => line.AppliesTo(key.Item1, key.Item2, key.Item3))));

    /// <summary>Between two days of change every day has the same limits, so there are only as many sheets as changes.</summary>
    private DateOnly DayOfLastChange(DateOnly day) => _changes.LastOrDefault(change => change <= day, DateOnly.MinValue);
}

/// <summary>The limits in force for one visit.</summary>
public sealed class LimitSheet(IEnumerable<LimitDefinition> inForce)
{
    private readonly ILookup<string, LimitDefinition> _byId = inForce.ToLookup(line => line.Id, StringComparer.Ordinal);

    /// <summary>The limit <paramref name="id"/>; null when there is not exactly one.</summary>
    public Limit? Find(string id) => _byId[id].ToList() is [var only] ? only.AsLimit : null;

    /// <summary>The limit <paramref name="id"/>.</summary>
    /// <exception cref="InvalidOperationException">There is not exactly one: the rule that asked ends as an error, never as a pass.</exception>
    public Limit this[string id] => _byId[id].ToList() switch
    {
        [var only] => only.AsLimit,
        { Count: var count } => throw new InvalidOperationException($"{count} limits '{id}' are in force for this visit; exactly one is needed."),
    };

    /// <summary>
    /// The maker's own largest value where it counts, else the default. A value looser than the default counts only when the record
    /// names its source; no maker's value lifts <paramref name="ceilingId"/>.
    /// </summary>
    public Limit MakerMax(decimal? makersValue, string? makersSource, string defaultId, string? ceilingId = null)
    {
        var standard = this[defaultId];
        if (makersValue is not { } value || (value > standard.Max && string.IsNullOrWhiteSpace(makersSource)))
            return standard;

        return ceilingId is not null && this[ceilingId] is var ceiling && value > ceiling.Max ? ceiling : Maker(null, value, standard.Unit, makersSource);
    }

    /// <summary>A limit that only the maker can set.</summary>
    public static Limit Maker(decimal? min, decimal? max, string? unit, string? source) => new()
    {
        Min = min,
        Max = max,
        Unit = unit,
        Origin = LimitOrigin.Maker,
        Source = string.IsNullOrWhiteSpace(source) ? "maker's value as recorded, source not named" : source,
        Verified = false,
    };
}
