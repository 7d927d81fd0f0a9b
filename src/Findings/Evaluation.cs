using System.Text.Json.Serialization;

namespace Findings;

/// <summary>What the service says of one record. It says what the record shows; it never says that a boiler is safe.</summary>
public sealed record Evaluation
{
    /// <summary>Id of the stored evaluation; absent when it was not stored.</summary>
    public string? EvaluationId { get; init; }

    /// <summary>The caller's own id of the record.</summary>
    public required string RecordId { get; init; }

    /// <summary>When the service evaluated (RFC 3339, UTC).</summary>
    public DateTimeOffset? EvaluatedAt { get; init; }

    /// <summary>What the whole record shows.</summary>
    public required OverallOutcome Outcome { get; init; }

    /// <summary>May the job be closed on this record?</summary>
    public required Closing Closing { get; init; }

    /// <summary>Whose law: the date written in <c>finishedAt</c>, at its own offset.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>From which day deadlines are seen.</summary>
    public required DateOnly LookedAtOn { get; init; }

    /// <summary>The rules that judged.</summary>
    public required RuleSetInfo RuleSet { get; init; }

    /// <summary>Version of the program.</summary>
    public string? EngineVersion { get; init; }

    /// <summary>What was looked up beside the record.</summary>
    public required EvaluationContext Context { get; init; }

    /// <summary>Which evaluation it replaces and what is no longer said; absent where it replaces none. Not part of the hashes.</summary>
    public ReplacedEvaluation? Supersedes { get; init; }

    /// <summary>SHA-256 of the record's canonical form and its context, lower-case hex.</summary>
    public required string InputHash { get; init; }

    /// <summary>SHA-256 of what was judged, without ids, times and engine version, lower-case hex; texts that the rule set fixes are left out, as are the sentences of passes.</summary>
    public string? ResultHash { get; init; }

    /// <summary>Answers by outcome, always all seven.</summary>
    public required OutcomeCounts Counts { get; init; }

    /// <summary>The answers, gravest first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What the visit calls for, and how far the record shows that it was done.</summary>
    public IReadOnlyList<Duty> Duties { get; init; } = [];

    /// <summary>The dangers of the visit, and what was done about them; absent where there is none.</summary>
    public Situation? Situation { get; init; }

    /// <summary>What waits until the appliance is used again, put off now or before, and what of that was made up now; absent: nothing.</summary>
    public IReadOnlyList<Deferral>? Deferrals { get; init; }

    /// <summary>What the record lacks and must have, as questions, in the order in which they can be answered on site.</summary>
    public required IReadOnlyList<MissingItem> Missing { get; init; }

    /// <summary>What the record lacks and should have, in the same form: closing does not wait for it.</summary>
    public IReadOnlyList<MissingItem> NotLookedAt { get; init; } = [];

    /// <summary>Duties that are not yet due.</summary>
    public required IReadOnlyList<DueItem> Due { get; init; }

    /// <summary>Every number that the service worked out.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>The usual cautions.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>What the next known change of law would make of it; only where it was asked for. Not part of the hashes.</summary>
    public NextChange? NextChange { get; init; }
}

/// <summary>May the job be closed on this record, and if not, which rules stand in the way?</summary>
public sealed class Closing
{
    /// <summary>False while evidence is missing, a rule failed, or an unsafe finding is not answered by a defect that was dealt with.</summary>
    public required bool Allowed { get; init; }

    /// <summary>As what it closes, or would close: visit, repair, check, service or installation.</summary>
    public string? ClosesAs { get; init; }

    /// <summary>Ids of the rules that stand in the way, sorted.</summary>
    public required IReadOnlyList<string> BlockedBy { get; init; }
}

/// <summary>Which rules judged, and which program judged by them.</summary>
[JsonConverter(typeof(RuleSetInfoConverter))]
public sealed class RuleSetInfo
{
    /// <summary>Name of the rule set.</summary>
    public required string Id { get; init; }

    /// <summary>Its version.</summary>
    public required string Version { get; init; }

    /// <summary>SHA-256 over what the rules demand in words and numbers: rules, limits, overrides, references, version and days, lower-case hex. The same in every build.</summary>
    public required string LawHash { get; init; }

    /// <summary>SHA-256 over the compiled program that judges, lower-case hex. Another build, by another compiler, may have another.</summary>
    public required string CodeHash { get; init; }
}

/// <summary>What was looked up beside the record before judging.</summary>
public sealed record EvaluationContext
{
    /// <summary>The stored evaluation that served as the previous visit.</summary>
    public string? PreviousEvaluationId { get; init; }

    /// <summary>What was known of earlier visits with this serial number, the latest first; absent: nothing.</summary>
    [WholeOnly]
    public IReadOnlyList<PastVisit>? History { get; init; }

    /// <summary>Answers that were given to this very visit before and named a danger, the latest first; absent: none.</summary>
    [WholeOnly]
    public IReadOnlyList<EarlierAnswer>? SaidBefore { get; init; }

    /// <summary>The stored maker's profile that supplied limits.</summary>
    public string? ProfileId { get; init; }

    /// <summary>Its version.</summary>
    public int? ProfileVersion { get; init; }
}

/// <summary>Something that the record lacks, as a question.</summary>
public sealed class MissingItem
{
    /// <summary>JSON Pointer of the absent member.</summary>
    public required string Pointer { get; init; }

    /// <summary>A question that the engineer can answer.</summary>
    public required string Ask { get; init; }

    /// <summary>True when it can only be answered on site.</summary>
    public required bool WhileOnSite { get; init; }

    /// <summary>What calls for it, in words.</summary>
    [WholeOnly]
    public IReadOnlyList<string> Because { get; init; } = [];

    /// <summary>Ids of the rules that need it, sorted.</summary>
    [WholeOnly]
    public required IReadOnlyList<string> NeededBy { get; init; }
}

/// <summary>A duty that is not yet due.</summary>
public sealed class DueItem
{
    /// <summary>The duty in words.</summary>
    public required string What { get; init; }

    /// <summary>Last day on which it can be done in time; of what is due before the boiler is used again, the day from which it waits.</summary>
    public required DateOnly By { get; init; }

    /// <summary>True where it is due before the boiler is used again, whenever that is; absent otherwise.</summary>
    public bool? BeforeUse { get; init; }

    /// <summary>The rule that watches it.</summary>
    public required string RuleId { get; init; }

    /// <summary>The clause it rests on.</summary>
    public Reference? Reference { get; init; }
}

/// <summary>The evaluation that another one replaces, and what the later one no longer says.</summary>
public sealed class ReplacedEvaluation
{
    /// <summary>Id of the replaced evaluation. It can be read as before.</summary>
    public required string EvaluationId { get; init; }

    /// <summary>What the replaced record showed.</summary>
    public required OverallOutcome Outcome { get; init; }

    /// <summary>True where the earlier evaluation goes on counting for its own appliance, in history and lists, until somebody decides: the record says that it was of the wrong one, and it was unsafe or could not be closed.</summary>
    public required bool StillStands { get; init; }

    /// <summary>Findings of the replaced evaluation that were unsafe or stood in the way of closing, and of which the later one says less or nothing.</summary>
    public required IReadOnlyList<GoneFinding> Gone { get; init; }
}

/// <summary>A finding that a corrected record no longer shows as it was.</summary>
public sealed class GoneFinding
{
    /// <summary>The rule.</summary>
    public required string RuleId { get; init; }

    /// <summary>The rule's demand in words.</summary>
    public required string Title { get; init; }

    /// <summary>JSON Pointer of what was judged; empty for the whole visit.</summary>
    public required string Subject { get; init; }

    /// <summary>What was said before.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>What is said now; absent where the rule says nothing of this subject any more.</summary>
    public Outcome? Now { get; init; }
}
