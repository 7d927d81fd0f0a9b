namespace RuleModel;

/// <summary>One answer of a rule: a subject and what the rule says of it.</summary>
/// <param name="Subject">JSON Pointer.</param>
/// <param name="Verdict">What the rule says.</param>
public sealed record Answer(string Subject, Verdict Verdict);

/// <summary>What one rule said of one visit, judged once and read by condition, report and completeness pass alike.</summary>
public sealed class Judgement(IReadOnlyList<Answer> answers)
{
    /// <summary>An answer for each subject; never empty.</summary>
    public IReadOnlyList<Answer> Answers { get; } = answers;

    /// <summary>Is there anything to report?</summary>
    public bool Concerns { get; } = answers.Any(answer => answer.Verdict.IsProblem);

    /// <summary>Did the engine fire the rule?</summary>
    public bool Reported { get; internal set; }
}

/// <summary>The judgements of one visit. Lives and dies with it, on one thread.</summary>
public sealed class Judgements(Visit visit)
{
    private readonly Dictionary<ComplianceRule, Judgement> _byRule = [];
    private readonly Dictionary<ComplianceRule, IReadOnlyList<LimitDefinition>> _loosened = [];

    /// <summary>What <paramref name="rule"/> said, or null when it was never asked.</summary>
    public Judgement? Of(ComplianceRule rule) => _byRule.GetValueOrDefault(rule);

    /// <summary>The limits that <paramref name="rule"/> read and that the deployer has loosened.</summary>
    public IReadOnlyList<LimitDefinition> LoosenedFor(ComplianceRule rule) => _loosened.GetValueOrDefault(rule, []);

    /// <summary>Lets <paramref name="rule"/> read limits and notes which of them the deployer has loosened.</summary>
    internal T Watch<T>(ComplianceRule rule, Func<Visit, T> read)
    {
        _ = visit.Limits.TakeLoosened();
        var result = read(visit);
        if (visit.Limits.TakeLoosened() is { Count: > 0 } loosened)
            _loosened[rule] = [.. LoosenedFor(rule).Union(loosened)];
        return result;
    }

    /// <summary>What an inference rule concludes; <paramref name="answer"/> is added to its answers.</summary>
    internal void Conclude(ComplianceRule rule, Answer answer) =>
        _byRule[rule] = new Judgement([.. _byRule.GetValueOrDefault(rule)?.Answers ?? [], answer]) { Reported = true };

    internal Judgement Of(ComplianceRule rule, Func<Visit, IReadOnlyList<Answer>> judge)
    {
        if (_byRule.TryGetValue(rule, out var judgement))
            return judgement;

        judgement = new Judgement(Watch(rule, judge));
        _byRule.Add(rule, judgement);
        return judgement;
    }
}
