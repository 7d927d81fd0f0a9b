using System.Collections.Concurrent;
using Findings;

namespace Kernel;

/// <summary>Every limit with where and when it applies: those that are shipped, and those that the deployer has set over them.</summary>
public sealed class LimitBook(IReadOnlyList<LimitDefinition> definitions, IReadOnlyList<LimitDefinition>? overrides = null, IReadOnlyList<string>? deployersTables = null)
{
    private readonly ConcurrentDictionary<(string? Fuel, string Jurisdiction, DateOnly Day), ILookup<string, LimitDefinition>> _inForce = new();

    /// <summary>Ids of tables of which nothing is shipped: a deployer fills them from a document of their own.</summary>
    public IReadOnlyList<string> DeployersTables { get; } = deployersTables ?? [];

    /// <summary>All shipped lines.</summary>
    public IReadOnlyList<LimitDefinition> Definitions { get; } = definitions;

    /// <summary>All lines of the deployer.</summary>
    public IReadOnlyList<LimitDefinition> Overrides { get; } = overrides ?? [];

    /// <summary>Every day on which a limit begins or is the first day without it, in order.</summary>
    public IReadOnlyList<DateOnly> Changes { get; } =
    [
        .. definitions.Concat(overrides ?? []).SelectMany(line => new[] { line.InForceFrom, line.InForceTo?.AddDays(1) }).OfType<DateOnly>().Distinct().Order(),
    ];

    /// <summary>Is there a limit, or a deployer's table, of this id?</summary>
    public bool Knows(string id) => Definitions.Any(line => line.Id == id) || DeployersTables.Contains(id, StringComparer.Ordinal);

    /// <summary>The limits in force for one visit. Made for that visit alone: it remembers what was read.</summary>
    /// <param name="fuel">The fuel, as the record names it; null where it does not.</param>
    /// <param name="jurisdiction">Whose law.</param>
    /// <param name="day">The day on which they are in force.</param>
    public LimitSheet For(string? fuel, string jurisdiction, DateOnly day) => new(InForce(fuel, jurisdiction, day), knowsFuel: fuel is not null);

    /// <summary>The limit <paramref name="id"/>, which is the same for every fuel and everywhere.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="day">The day on which it is in force.</param>
    public Limit Everywhere(string id, DateOnly day)
    {
        var lines = Overrides.Where(line => IsEverywhere(line, id, day)).ToList();
        return (lines.Count > 0 ? lines : [.. Definitions.Where(line => IsEverywhere(line, id, day))]).Single().AsLimit;
    }

    /// <summary>
    /// The lines in force, by id; where a line of the deployer applies, it stands in place of the shipped one. Without a fuel: those that are
    /// in force for any.
    /// </summary>
    public ILookup<string, LimitDefinition> InForce(string? fuel, string jurisdiction, DateOnly day) => _inForce.GetOrAdd(
        (fuel, jurisdiction, DayOfLastChange(day)), key =>
        {
            var own = Overrides.Where(line => line.AppliesTo(key.Fuel, key.Jurisdiction, key.Day)).ToLookup(line => line.Id, StringComparer.Ordinal);
            return Definitions.Where(line => line.AppliesTo(key.Fuel, key.Jurisdiction, key.Day) && !own.Contains(line.Id))
                .Concat(own.SelectMany(lines => lines))
                .ToLookup(line => line.Id, StringComparer.Ordinal);
        });

    private static bool IsEverywhere(LimitDefinition line, string id, DateOnly day) => line.Id == id && line is { Fuels: null, Jurisdictions: null } && line.IsInForce(day);

    /// <summary>Between two days of change every day has the same limits, so there are only as many lookups as changes.</summary>
    private DateOnly DayOfLastChange(DateOnly day) => Changes.LastOrDefault(change => change <= day, DateOnly.MinValue);
}

/// <summary>
/// The limits in force for one visit. It remembers which of those that the deployer has loosened were read. Of a visit whose fuel is not
/// known, reading one that differs by it throws a <see cref="FuelNeededException"/>.
/// </summary>
public sealed class LimitSheet
{
    private readonly ILookup<string, LimitDefinition> _byId;
    private readonly List<LimitDefinition> _loosened = [];

    private readonly bool _knowsFuel;

    internal LimitSheet(ILookup<string, LimitDefinition> byId, bool knowsFuel) => (_byId, _knowsFuel) = (byId, knowsFuel);

    /// <summary>The limit <paramref name="id"/>; null when none is in force for this visit.</summary>
    /// <exception cref="InvalidOperationException">There are several: none of them is to be taken as no limit.</exception>
    public Limit? Find(string id) => Lines(id).Count == 0 ? null : this[id];

    /// <summary>The limit <paramref name="id"/>.</summary>
    /// <exception cref="InvalidOperationException">There is not exactly one: the rule that asked ends as an error, never as a pass.</exception>
    public Limit this[string id] => Lines(id) switch
    {
        [var only] => Read(only),
        { Count: var count } => throw new InvalidOperationException($"{count} limits '{id}' are in force for this visit; exactly one is needed."),
    };

    /// <summary>Has the deployer filled the table <paramref name="id"/> for this visit?</summary>
    public bool HasTable(string id) => Lines(id).Count > 0;

    /// <summary>The line of the table <paramref name="id"/> for an installation volume; null where the table does not reach so far.</summary>
    public Limit? ByVolume(string id, decimal volumeM3) =>
        Lines(id).SingleOrDefault(line => !(volumeM3 <= line.VolumeAboveM3) && !(volumeM3 > line.VolumeUpToM3)) is { } line ? Read(line) : null;

    /// <summary>Reads limits for numbers that are shown: the rule that happens to ask for them first has not read them.</summary>
    public T Unwatched<T>(Func<T> read)
    {
        var before = _loosened.Count;
        var result = read();
        _loosened.RemoveRange(before, _loosened.Count - before);
        return result;
    }

    /// <summary>The loosened limits read since this was last asked.</summary>
    internal IReadOnlyList<LimitDefinition> TakeLoosened()
    {
        if (_loosened.Count == 0)
            return [];

        LimitDefinition[] taken = [.. _loosened.Distinct()];
        _loosened.Clear();
        return taken;
    }

    /// <summary>Counts loosened limits as read.</summary>
    internal void AddLoosened(IReadOnlyList<LimitDefinition> read) => _loosened.AddRange(read);

    // What a lookup gives is a list, found or not.
    private IList<LimitDefinition> Lines(string id)
    {
        var lines = (IList<LimitDefinition>)_byId[id];
        return _knowsFuel || lines.All(line => line.Fuels is null) ? lines : throw new FuelNeededException();
    }

    private Limit Read(LimitDefinition line)
    {
        if (line.Loosens == true)
            _loosened.Add(line);
        return line.AsLimit;
    }

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
