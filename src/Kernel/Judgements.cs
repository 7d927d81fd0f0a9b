using System.Collections.Immutable;

namespace Kernel;

/// <summary>One answer of a rule: a subject and what the rule says of it.</summary>
/// <param name="Subject">JSON Pointer.</param>
/// <param name="Verdict">What the rule says.</param>
public readonly record struct Answer(string Subject, Verdict Verdict);

/// <summary>What one rule said of one visit, judged once and read by condition, report and completeness pass alike.</summary>
public sealed class Judgement(ImmutableArray<Answer> answers)
{
    /// <summary>A judgement on one subject.</summary>
    public Judgement(string subject, Verdict verdict)
        : this([new Answer(subject, verdict)])
    {
    }

    /// <summary>What every rule says that does not concern a visit.</summary>
    public static Judgement NotConcerned { get; } = new("", Look.AtNothing.NotApplicable($"the rule does not concern this visit"));

    /// <summary>An answer for each subject; never empty.</summary>
    public ImmutableArray<Answer> Answers { get; } = answers;

    /// <summary>Is there anything to report?</summary>
    public bool Concerns { get; } = answers.Any(answer => answer.Verdict.IsProblem);

    /// <summary>Did the engine fire the rule?</summary>
    public bool Reported { get; internal set; }
}

/// <summary>The judgements of one visit. Lives and dies with it, on one thread at a time.</summary>
public sealed class Judgements(JudgedVisit visit)
{
    // By what rules say of themselves, which all instances of a class share: a rule may rest on another by an instance of its own.
    private readonly Dictionary<RuleInfo, Judgement> _byRule = [];
    private Dictionary<RuleInfo, IReadOnlyList<LimitDefinition>>? _loosened;
    private Look? _idleLook;

    /// <summary>Makes room for the judgements of as many rules.</summary>
    internal void Expect(int rules) => _byRule.EnsureCapacity(rules);

    /// <summary>What <paramref name="rule"/> said, or null when it was never asked.</summary>
    public Judgement? Of(IComplianceRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return _byRule.GetValueOrDefault(rule.Info);
    }

    /// <summary>The limits that <paramref name="rule"/> read and that the deployer has loosened; null when there was none.</summary>
    public IReadOnlyList<LimitDefinition>? LoosenedFor(IComplianceRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return _loosened?.GetValueOrDefault(rule.Info);
    }

    /// <summary>What a rule of the first pass said, with its sentences and evidence: judged once more where they were not kept.</summary>
    internal Judgement InFull(FirstPassRule rule) => visit.Detail == Detail.Everything
        ? Of(rule)
        : visit.Limits.Unwatched(() => rule.Judge(visit, new Look("", visit.Model)));

    /// <summary>What <paramref name="rule"/> says, for another that rests on it, and so on the limits that were read for it.</summary>
    public ImmutableArray<Answer> ReliedOn(FirstPassRule rule)
    {
        var judgement = Of(rule);
        visit.Limits.AddLoosened(LoosenedFor(rule) ?? []);
        return judgement.Answers;
    }

    /// <summary>Lets an inference rule read a limit and notes whether the deployer has loosened it.</summary>
    internal Findings.Limit Watch(IComplianceRule rule, string limitId)
    {
        _ = visit.Limits.TakeLoosened();
        var limit = visit.Limits[limitId];
        NoteLoosened(rule);
        return limit;
    }

    /// <summary>What an inference rule concludes; <paramref name="answer"/> is added to its answers.</summary>
    internal void Conclude(IComplianceRule rule, Answer answer)
    {
        _byRule[rule.Info] = new Judgement([.. Of(rule)?.Answers ?? [], answer]) { Reported = true };
    }

    /// <summary>What a rule of the first pass says, judged when it is first asked.</summary>
    internal Judgement Of(FirstPassRule rule)
    {
        if (_byRule.TryGetValue(rule.Info, out var known))
            return known;

        // Another rule may be at work and rest on this one.
        var readBefore = visit.Limits.TakeLoosened();
        var look = _idleLook ?? (visit.Detail == Detail.Everything ? new Look("", visit.Model) : Look.Quiet(visit.Model));
        _idleLook = null;
        var judgement = rule.Judge(visit, look);
        _idleLook = look;
        NoteLoosened(rule);
        visit.Limits.AddLoosened(readBefore);
        return _byRule[rule.Info] = judgement;
    }

    private void NoteLoosened(IComplianceRule rule)
    {
        if (visit.Limits.TakeLoosened() is { Count: > 0 } loosened)
            (_loosened ??= [])[rule.Info] = [.. (LoosenedFor(rule) ?? []).Union(loosened)];
    }
}
