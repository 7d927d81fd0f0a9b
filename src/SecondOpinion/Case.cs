using Findings;
using Records;

namespace SecondOpinion;

/// <summary>One record to form an opinion on.</summary>
internal sealed class Case(ServiceRecord record, IReadOnlyList<PastVisit> history, IReadOnlyList<Finding> firstPass, IReadOnlyList<EarlierAnswer>? saidBefore = null)
{
    private readonly Dictionary<string, Bounds?> _limits = new(StringComparer.Ordinal);

    public ServiceRecord Record { get; } = record;

    /// <summary>Earlier visits that were looked up, the latest first.</summary>
    public IReadOnlyList<PastVisit> History { get; } = history;

    /// <summary>Answers to other records of this visit that named a danger; none where nothing was looked up.</summary>
    public IReadOnlyList<EarlierAnswer> SaidBefore { get; } = saidBefore ?? [];

    /// <summary>Whose law: the date written in <c>finishedAt</c>.</summary>
    public DateOnly AsOf { get; } = record.FinishedAt.Date;

    /// <summary>The record by its pointers.</summary>
    public Pages Pages => field ??= new Pages(Record);

    /// <summary>The service's own answers of the rules that infer nothing: what the inferring rules start from.</summary>
    public IReadOnlyList<Finding> FirstPass { get; } = firstPass;

    /// <summary>The bounds of a limit for this fuel, nation and day; null where none apply.</summary>
    public Bounds? Limit(string id) => _limits.TryGetValue(id, out var bounds)
        ? bounds
        : _limits[id] = Limits.Find(id, Record.Appliance.Fuel, Record.Jurisdiction, AsOf);
}
