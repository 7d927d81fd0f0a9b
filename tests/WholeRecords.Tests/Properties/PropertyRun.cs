using System.Collections.Concurrent;

namespace WholeRecords.Tests.Properties;

/// <summary>All properties, asked of an engine over records.</summary>
internal sealed class PropertyRun
{
    private readonly ConcurrentBag<Counterexample> _found = [];
    private readonly ConcurrentDictionary<string, int> _asked = new(StringComparer.Ordinal);
    private int _records;
    private int _closed;

    /// <summary>All seven.</summary>
    public static IReadOnlyList<IProperty> AllProperties(RunLength length) =>
        [new AdditionProperty(), new RemovalProperty(length), new DangerwardProperty(length), new DangerProperty(), new EarlierDangerProperty(length), new DutyProperty(), new SameFactsProperty(), new EscapeProperty(length)];

    /// <summary>Those of them that need no auditor: asked of made visits as well.</summary>
    public static IReadOnlyList<IProperty> PropertiesOfAnyRecord(RunLength length) =>
        [new AdditionProperty(), new DangerwardProperty(length), new DangerProperty(), new EarlierDangerProperty(length), new SameFactsProperty()];

    /// <summary>Asks.</summary>
    /// <param name="engine">Any.</param>
    /// <param name="starts">Those that can be read are asked about.</param>
    /// <param name="properties">Which.</param>
    public PropertyRun(IEngine engine, IEnumerable<Start> starts, params IReadOnlyList<IProperty> properties)
    {
        Properties = properties;
        Parallel.ForEach(Partitioner.Create(starts, EnumerablePartitionerOptions.NoBuffering), start =>
        {
            if (Base.Of(engine, start) is not { } one)
                return;
            Interlocked.Increment(ref _records);
            if (one.Said.MayClose)
                Interlocked.Increment(ref _closed);
            foreach (var found in properties.SelectMany(property => property.Ask(one, claim => _asked.AddOrUpdate(claim.Id, 1, (_, count) => count + 1))))
                _found.Add(found);
        });
        Found = [.. _found.OrderBy(one => one.Claim.Id, StringComparer.Ordinal).ThenBy(one => one, Counterexample.ByLength)];
    }

    public IReadOnlyList<IProperty> Properties { get; }

    /// <summary>Records that could be read, and how many of them the engine lets close as they are: where few do, claims about closing are easily kept.</summary>
    public (int Records, int Closed) Bases => (_records, _closed);

    public IEnumerable<Claim> Claims => Properties.SelectMany(property => property.Claims);

    public IReadOnlyList<Counterexample> Found { get; }

    public IEnumerable<Counterexample> Of(Claim claim) => Found.Where(one => one.Claim == claim);

    /// <summary>How often the engine was asked; 0 where it does not give what the claim is about.</summary>
    public int Asked(Claim claim) => _asked.GetValueOrDefault(claim.Id);
}
