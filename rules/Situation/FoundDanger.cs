using Findings;
using Records;
using Visits;
using Wire;

namespace Rules.Situation;

/// <summary>A danger of a visit: a fact of the situation, which other rules of it match.</summary>
/// <param name="finding">What shows it; null where the engineer's class alone does.</param>
/// <param name="answeredBy">The recorded defects that are the engineer's word on it.</param>
public sealed class FoundDanger(Finding? finding, IReadOnlyList<RecordedDefect> answeredBy)
{
    /// <summary>What shows it; null where the engineer's class alone does.</summary>
    public Finding? Finding { get; } = finding;

    /// <summary>The recorded defects that are the engineer's word on it.</summary>
    public IReadOnlyList<RecordedDefect> AnsweredBy { get; } = answeredBy;

    /// <summary>Id of the rule that found it.</summary>
    public string RuleId => Finding?.RuleId ?? (IsImmediatelyDangerous ? RuleIds.ImmediatelyDangerousRecorded : RuleIds.AtRiskRecorded);

    /// <summary>JSON Pointer of what is dangerous.</summary>
    public string Subject => Finding?.Subject ?? AnsweredBy[0].Pointer;

    /// <summary>The class that would be expected of it, or that the engineer gave; the graver of the two.</summary>
    public ExpectedClass ExpectedClass => IsImmediatelyDangerous || Finding?.ExpectedClass == ExpectedClass.ImmediatelyDangerous ? ExpectedClass.ImmediatelyDangerous : ExpectedClass.AtRisk;

    /// <summary>The danger as an answer shows it.</summary>
    /// <param name="state">What became of it.</param>
    /// <param name="handled">Does what was done count?</param>
    /// <param name="by">The defect that says so; null where none answers it.</param>
    public Danger As(DangerState state, bool handled, RecordedDefect? by) => new()
    {
        RuleId = RuleId,
        Subject = Subject,
        State = state,
        Handled = handled,
        Defect = by?.Pointer,
        IsolatedAt = WireNames.Of(by?.Defect.IsolatedAt),
        Concerns = IsOfThisAppliance ? null : WireNames.Of(by?.Defect.Concerns),
    };

    /// <summary>Is it a danger of this boiler?</summary>
    public bool IsOfThisAppliance => Finding is not null || AnsweredBy[0].IsOfThisAppliance;

    private bool IsImmediatelyDangerous => AnsweredBy.Any(recorded => recorded.Defect.Class == DefectClass.ImmediatelyDangerous);
}

/// <summary>What was done about a danger, by one defect: a fact of the situation.</summary>
/// <param name="danger">The danger.</param>
/// <param name="counts">Does it take the danger away, or meet all that is owed where it stays?</param>
public sealed class DealtWith(FoundDanger danger, bool counts)
{
    /// <summary>The danger.</summary>
    public FoundDanger Danger { get; } = danger;

    /// <summary>Does it take the danger away, or meet all that is owed where it stays?</summary>
    public bool Counts { get; } = counts;
}

/// <summary>A danger about which nothing that counts was done: a fact of the situation.</summary>
/// <param name="danger">The danger.</param>
public sealed class OpenDanger(FoundDanger danger)
{
    /// <summary>The danger.</summary>
    public FoundDanger Danger { get; } = danger;
}
