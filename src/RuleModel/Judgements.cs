using System.Collections.Immutable;

namespace RuleModel;

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
    public static Judgement NotConcerned { get; } = new("", new Look("").NotApplicable($"the rule does not concern this visit"));

    /// <summary>An answer for each subject; never empty.</summary>
    public ImmutableArray<Answer> Answers { get; } = answers;

    /// <summary>Is there anything to report?</summary>
    public bool Concerns { get; } = answers.Any(answer => answer.Verdict.IsProblem);

    /// <summary>Did the engine fire the rule?</summary>
    public bool Reported { get; internal set; }
}

/// <summary>The judgements of one visit. Lives and dies with it, on one thread at a time.</summary>
public sealed class Judgements(Visit visit)
{
    private Judgement?[] _byRule = new Judgement?[RuleInfo.HighestNumber + 1];
    private Dictionary<IComplianceRule, IReadOnlyList<LimitDefinition>>? _loosened;
    private Dictionary<FirstPassRule, Judgement>? _inFull;
    private Look? _idleLook;

    /// <summary>What <paramref name="rule"/> said, or null when it was never asked.</summary>
    public Judgement? Of(IComplianceRule rule) => Place(rule);

    /// <summary>The limits that <paramref name="rule"/> read and that the deployer has loosened; null when there was none.</summary>
    public IReadOnlyList<LimitDefinition>? LoosenedFor(IComplianceRule rule) => _loosened?.GetValueOrDefault(rule);

    /// <summary>What a rule of the first pass said, judged once more with all its evidence and sentences.</summary>
    public Judgement InFull(FirstPassRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        if (_inFull?.TryGetValue(rule, out var known) == true)
            return known;

        return (_inFull ??= [])[rule] = visit.Limits.Unwatched(() => rule.Judge(visit, new Look("")));
    }

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
        ref var judgement = ref Place(rule);
        judgement = new Judgement([.. judgement?.Answers ?? [], answer]) { Reported = true };
    }

    /// <summary>What a rule of the first pass says, judged when it is first asked.</summary>
    internal Judgement Of(FirstPassRule rule)
    {
        if (Place(rule) is { } known)
            return known;

        // Another rule may be at work and rest on this one.
        var readBefore = visit.Limits.TakeLoosened();
        var look = _idleLook ?? Look.Quiet();
        _idleLook = null;
        var judgement = rule.Judge(visit, look);
        _idleLook = look;
        NoteLoosened(rule);
        visit.Limits.AddLoosened(readBefore);
        return Place(rule) = judgement;
    }

    private void NoteLoosened(IComplianceRule rule)
    {
        if (visit.Limits.TakeLoosened() is { Count: > 0 } loosened)
            (_loosened ??= [])[rule] = [.. (LoosenedFor(rule) ?? []).Union(loosened)];
    }

    // A rule that was made after this visit still finds its place.
    private ref Judgement? Place(IComplianceRule rule)
    {
        if (rule.Info.Number >= _byRule.Length)
            Array.Resize(ref _byRule, RuleInfo.HighestNumber + 1);
        return ref _byRule[rule.Info.Number];
    }
}
