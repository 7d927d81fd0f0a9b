using Findings;

namespace Kernel.Catalogues;

/// <summary>What all findings of one rule share, made once for a catalogue.</summary>
/// <param name="rule">The rule.</param>
/// <param name="rank">Where its findings stand among others of the same outcome: by topic, then by id.</param>
/// <param name="references">Where its citations stand.</param>
/// <param name="documentation">Where its page is; null where there is none.</param>
internal sealed class RuleFace(IComplianceRule rule, int rank, ReferenceBook references, string? documentation) : IRuleText
{
    private Finding? _notConcerned;

    public IComplianceRule Rule => rule;

    public int Rank => rank;

    public string RuleId { get; } = rule.Info.Id;

    public string Topic { get; } = rule.Info.Topic;

    public string Title { get; } = rule.Info.Title;

    public string? Documentation => documentation;

    /// <summary>The clauses that it rests on; null for common practice.</summary>
    public IReadOnlyList<Reference>? References => rule.Info.Citations.Count > 0 ? field ??= references.Of(rule.Info) : null;

    /// <summary>What the rule says of a subject, as a finding.</summary>
    /// <param name="subject">JSON Pointer.</param>
    /// <param name="verdict">What it says.</param>
    public Finding FindingOf(string subject, Verdict verdict) => ReferenceEquals(verdict, Judgement.NotConcerned.Answers[0].Verdict)
        ? _notConcerned ??= new Finding(this, subject, verdict.Outcome, verdict)
        : new Finding(this, subject, verdict.Outcome, verdict);
}
