using NRules.Fluent.Dsl;

namespace RuleModel;

/// <summary>
/// One demand on a service record. A rule says where it applies, what it needs to see, whom it concerns and how it judges one
/// subject; the engine's part is written here, once.
/// </summary>
public abstract class ComplianceRule : Rule
{
    /// <summary>What the rule says of itself.</summary>
    public RuleInfo Info => field ??= RuleInfo.Of(GetType());
}

/// <summary>A rule that judges subjects of type <typeparamref name="T"/>: a reading, a joint, a test, or the whole visit.</summary>
public abstract class ComplianceRule<T> : ComplianceRule
{
    /// <summary>
    /// Does the rule concern this visit? Null when a member that settles it is absent (see <see cref="AppliesByAttribute"/>).
    /// <c>&amp;</c> and <c>|</c> on <c>bool?</c> carry the unknown along.
    /// </summary>
    protected virtual bool? Applies(Visit visit) => true;

    /// <summary>What is to be judged, each with its pointer; null when the record does not carry the list at all.</summary>
    protected abstract IEnumerable<Subject<T>>? Subjects(Visit visit);

    /// <summary>Judges one subject. <paramref name="look"/> collects what was looked at and makes the verdict.</summary>
    protected abstract Verdict Assess(T subject, Visit visit, Look look);

    /// <summary>The verdict when the record states that there is nothing to judge. An empty list is a statement: none.</summary>
    protected virtual Verdict WhenNone(Visit visit, Look look) => look.NotApplicable($"none recorded");

    /// <inheritdoc />
    public sealed override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => Concerns(v));
        Then().Do(context => Report(visit));
    }

    private bool Concerns(Visit visit) => Info.IsInForce(visit.AsOf) && visit.Judgements.Of(this, Judge).Concerns;

    private void Report(Visit visit) => visit.Judgements.Of(this, Judge).Reported = true;

    private List<Answer> Judge(Visit visit)
    {
        var wholeVisit = new Look("");
        switch (Applies(visit))
        {
            case false:
                return [new Answer("", wholeVisit.NotApplicable($"the rule does not concern this visit"))];
            case null:
                return [new Answer("", wholeVisit.Missing($"the record does not say whether this concerns the visit", [.. Info.AppliesBy.Where(visit.Lacks)]))];
        }

        var subjects = Subjects(visit);
        if (subjects is null)
            return [new Answer(Info.Expects!, wholeVisit.Missing($"the record does not say anything here", Info.Expects!))];

        var answers = subjects.Select(subject => new Answer(subject.Pointer, Assess(subject.Value, visit, new Look(subject.Pointer)))).ToList();
        return answers.Count > 0 ? answers : [new Answer("", WhenNone(visit, wholeVisit))];
    }
}

/// <summary>A rule whose one subject is the whole visit.</summary>
public abstract class VisitRule : ComplianceRule<Visit>
{
    /// <inheritdoc />
    protected sealed override IEnumerable<Subject<Visit>> Subjects(Visit visit) => [new(SubjectPointer, visit)];

    /// <summary>Pointer of what the rule is about; empty for the visit as a whole.</summary>
    protected virtual string SubjectPointer => "";

    /// <summary>Judges the visit.</summary>
    protected abstract Verdict Assess(Visit visit, Look look);

    /// <inheritdoc />
    protected sealed override Verdict Assess(Visit subject, Visit visit, Look look) => Assess(visit, look);
}
