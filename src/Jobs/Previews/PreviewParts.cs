using System.Text.Json;
using System.Text.Json.Serialization;
using Findings;
using Jobs.Summary;
using Records;
using Wire;

namespace Jobs.Previews;

/// <summary>The sums of a part of a preview: the whole is the sum of its parts.</summary>
internal sealed class PreviewParts
{
    private const string NotRecorded = "(not recorded)";

    /// <summary>Evaluations judged anew.</summary>
    public int Judged { get; set; }

    /// <summary>Those that could not be.</summary>
    public int Rejected { get; set; }

    /// <summary>Those with any change.</summary>
    public int ChangedEvaluations { get; set; }

    /// <summary>Evaluations by overall outcome before and after, separated by a blank.</summary>
    public SortedDictionary<string, int> Outcomes { get; init; } = new(StringComparer.Ordinal);

    /// <summary>Evaluations by the law hashes in force and of the candidate and the code hash, separated by blanks.</summary>
    public SortedDictionary<string, int> RuleSets { get; init; } = new(StringComparer.Ordinal);

    /// <summary>All findings.</summary>
    public ChangeCounts Findings { get; init; } = new();

    /// <summary>By outcome.</summary>
    public SortedDictionary<string, ChangeCounts> Severities { get; init; } = new(StringComparer.Ordinal);

    /// <summary>By rule.</summary>
    public SortedDictionary<string, ChangeCounts> Rules { get; init; } = new(StringComparer.Ordinal);

    /// <summary>By engineer.</summary>
    public SortedDictionary<string, ChangeCounts> Engineers { get; init; } = new(StringComparer.Ordinal);

    /// <summary>By month.</summary>
    public SortedDictionary<string, ChangeCounts> Months { get; init; } = new(StringComparer.Ordinal);

    /// <summary>Adds one evaluation that was judged anew.</summary>
    public void Add(ServiceRecord record, OverallOutcome before, OverallOutcome after, IReadOnlyList<FindingChange> changes, RuleSetInfo inForce, RuleSetInfo candidate)
    {
        Judged++;
        ChangedEvaluations += changes.Any(change => change.Kind != ChangeKind.Unchanged) ? 1 : 0;
        Count(Outcomes, $"{before} {after}");
        Count(RuleSets, $"{inForce.LawHash} {candidate.LawHash} {candidate.CodeHash}");
        var engineer = record.Engineer?.LicenceNumber ?? NotRecorded;
        var month = PreviewRows.MonthOf(record.FinishedAt.Date);
        foreach (var change in changes)
        {
            Findings.Count(change.Kind);
            SummaryBuilder.At(Severities, WireNames.Of(change.Shown.Outcome)).Count(change.Kind);
            SummaryBuilder.At(Rules, change.Shown.RuleId).Count(change.Kind);
            SummaryBuilder.At(Engineers, engineer).Count(change.Kind);
            SummaryBuilder.At(Months, month).Count(change.Kind);
        }
    }

    /// <summary>Adds the sums of another part.</summary>
    public void Add(PreviewParts more)
    {
        Judged += more.Judged;
        Rejected += more.Rejected;
        ChangedEvaluations += more.ChangedEvaluations;
        foreach (var (key, evaluations) in more.Outcomes)
            Count(Outcomes, key, evaluations);
        foreach (var (key, evaluations) in more.RuleSets)
            Count(RuleSets, key, evaluations);
        Findings.Add(more.Findings);
        AddAll(Severities, more.Severities);
        AddAll(Rules, more.Rules);
        AddAll(Engineers, more.Engineers);
        AddAll(Months, more.Months);
    }

    /// <summary>The sums as they are shown.</summary>
    /// <param name="cautions">The cautions that every answer carries.</param>
    public PreviewSummary ToSummary(IReadOnlyList<string> cautions) => new()
    {
        ChangedEvaluations = ChangedEvaluations,
        Outcomes = [.. Outcomes.Select(pair => (Words: pair.Key.Split(' '), pair.Value)).Select(move => new OutcomeMove
        {
            Before = Enum.Parse<OverallOutcome>(move.Words[0]),
            After = Enum.Parse<OverallOutcome>(move.Words[1]),
            Evaluations = move.Value,
        }).OrderBy(move => move.Before).ThenBy(move => move.After)],
        Findings = Findings,
        Severities = Table(Severities, byChanges: true).Rows,
        Rules = Table(Rules, byChanges: true),
        Engineers = Table(Engineers, byChanges: true),
        Months = Table(Months, byChanges: false),
        RuleSets = [.. RuleSets.Select(pair => (Hashes: pair.Key.Split(' '), pair.Value)).Select(set =>
            new ComparedRules { InForce = set.Hashes[0], Candidate = set.Hashes[1], CodeHash = set.Hashes.ElementAtOrDefault(2), Evaluations = set.Value })],
        Cautions = cautions,
    };

    /// <summary>As it is kept.</summary>
    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(this, PreviewPartsJson.Default.PreviewParts);

    /// <summary>From what <see cref="ToBytes"/> gave.</summary>
    public static PreviewParts Of(byte[] bytes) => JsonSerializer.Deserialize(bytes, PreviewPartsJson.Default.PreviewParts)!;

    private static SummaryTable<ChangeTally> Table(SortedDictionary<string, ChangeCounts> table, bool byChanges) => new()
    {
        Total = table.Count,
        Rows = [.. table.OrderByDescending(pair => byChanges ? pair.Value.Changes : 0).ThenBy(pair => pair.Key, StringComparer.Ordinal)
            .Take(SummaryParts.MostRows).Select(pair => new ChangeTally { Key = pair.Key, Counts = pair.Value })],
    };

    private static void Count(SortedDictionary<string, int> table, string key, int evaluations = 1) => table[key] = table.GetValueOrDefault(key) + evaluations;

    private static void AddAll(SortedDictionary<string, ChangeCounts> table, SortedDictionary<string, ChangeCounts> more)
    {
        foreach (var (key, counts) in more)
            SummaryBuilder.At(table, key).Add(counts);
    }
}

/// <summary>Sums as they are kept.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(PreviewParts))]
internal sealed partial class PreviewPartsJson : JsonSerializerContext;
