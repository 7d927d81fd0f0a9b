using Findings;
using RuleModel;

namespace RuleEngine;

/// <summary>What all findings of one rule share, made once for a catalogue.</summary>
/// <param name="info">The rule.</param>
/// <param name="rank">Where its findings stand among others of the same outcome: by topic, then by id.</param>
/// <param name="references">Where its citations stand.</param>
internal sealed class RuleFace(RuleInfo info, int rank, ReferenceBook references)
{
    private readonly string _documentation = $"/v1/rules/{info.Id}";
    private Finding? _notConcerned;

    public RuleInfo Info => info;

    public int Rank => rank;

    /// <summary>The clauses that it rests on; null for common practice.</summary>
    public IReadOnlyList<Reference>? References => info.Citations.Count > 0 ? field ??= references.Of(info) : null;

    /// <summary>An answer of the rule as a finding.</summary>
    public Finding FindingOf(Answer answer) => ReferenceEquals(answer.Verdict, Judgement.NotConcerned.Answers[0].Verdict)
        ? _notConcerned ??= Make(answer)
        : Make(answer);

    private Finding Make(Answer answer) => new()
    {
        RuleId = info.Id,
        Topic = info.Topic,
        Outcome = answer.Verdict.Outcome,
        Title = info.Title,
        Subject = answer.Subject,
        References = References,
        Documentation = _documentation,
        Statement = answer.Verdict,
    };
}
