using System.Collections.Immutable;

namespace Kernel;

/// <summary>
/// A rule that is asked of the visit alone. It is a fact of the engine, which joins it with the visit, asks it whether it concerns it, and
/// fires where it does.
/// </summary>
public abstract class FirstPassRule : IComplianceRule
{
    /// <inheritdoc />
    public virtual RuleInfo Info => field ??= RuleInfo.Of(GetType());

    /// <summary>What it lacks besides what the catalogue asks of every rule, each as the end of a sentence that begins with its name; the catalogue refuses it.</summary>
    protected internal virtual IEnumerable<string> Gaps => [];

    private protected abstract bool? AppliesTo(JudgedVisit visit);

    /// <summary>An answer about each subject; null when the record does not carry what they are taken from.</summary>
    private protected abstract Judgement? JudgementOn(JudgedVisit visit, Look look);

    internal Judgement Judge(JudgedVisit visit, Look look)
    {
        try
        {
            return AppliesTo(visit) switch
            {
                false => Judgement.NotConcerned,
                null => new Judgement("", new Look("", visit.Model).Missing($"the record does not say whether this is asked of the visit: {Info.Title}", [.. Info.AppliesBy.Where(visit.Lacks)])),
                true => JudgementOn(visit, look) ?? new Judgement(Info.Expects!, new Look("", visit.Model).Missing($"the record does not say anything of what is asked here: {Info.Title}", Info.Expects!)),
            };
        }
        catch (FuelNeededException)
        {
            return new Judgement("", FuelAskedFor(visit));
        }
    }

    /// <summary>The verdict where the answer hangs on the fuel, and the record does not name it.</summary>
    private protected static Verdict FuelAskedFor(JudgedVisit visit) =>
        new Look("", visit.Model).Missing($"what is demanded here hangs on the fuel, which the record does not name", visit.Model.FuelAt);

    internal bool Concerns(JudgedVisit visit) => Info.IsInForce(visit.AsOf) && visit.Judgements.Of(this).Concerns;

    internal void Report(JudgedVisit visit) => visit.Judgements.Of(this).Reported = true;
}

/// <summary>A first-pass rule over visits of one kind.</summary>
/// <typeparam name="TVisit">What the rules see of a visit.</typeparam>
public abstract class FirstPassRule<TVisit> : FirstPassRule
    where TVisit : JudgedVisit
{
    /// <summary>Does the rule concern this visit? Null when a member that settles it is absent (see <see cref="AppliesByAttribute"/>).</summary>
    /// <remarks><c>&amp;</c> and <c>|</c> on <c>bool?</c> carry the unknown along.</remarks>
    protected virtual bool? Applies(TVisit visit) => true;

    private protected sealed override bool? AppliesTo(JudgedVisit visit) => Applies((TVisit)visit);
}

/// <summary>A rule that judges subjects of type <typeparamref name="T"/>: a reading, a joint, a test.</summary>
/// <typeparam name="TVisit">What the rules see of a visit.</typeparam>
/// <typeparam name="T">What is judged.</typeparam>
public abstract class SubjectRule<TVisit, T> : FirstPassRule<TVisit>
    where TVisit : JudgedVisit
{
    private readonly UsualJudgements _whenNone = new();

    /// <summary>What is to be judged, each with its pointer; null when the record does not carry the list at all.</summary>
    protected abstract IEnumerable<Subject<T>>? Subjects(TVisit visit);

    /// <summary>Judges one subject. <paramref name="look"/> collects what was looked at and makes the verdict.</summary>
    protected abstract Verdict Assess(T subject, TVisit visit, Look look);

    /// <summary>The verdict when the record states that there is nothing to judge. An empty list is a statement: none.</summary>
    protected virtual Verdict WhenNone(TVisit visit, Look look) => look.NotApplicable($"none recorded");

    private protected sealed override Judgement? JudgementOn(JudgedVisit visit, Look look)
    {
        var own = (TVisit)visit;
        if (Subjects(own) is not { } subjects)
            return null;

        _ = subjects.TryGetNonEnumeratedCount(out var count);
        var answers = ImmutableArray.CreateBuilder<Answer>(count);
        foreach (var (pointer, value) in subjects)
            answers.Add(new Answer(pointer, Assessed(value, pointer, own, look)));
        return answers.Count > 0 ? new Judgement(answers.DrainToImmutable()) : _whenNone.Of("", WhenNone(own, look.At("")));
    }

    private Verdict Assessed(T value, string pointer, TVisit visit, Look look)
    {
        try
        {
            return Assess(value, visit, look.At(pointer));
        }
        catch (FuelNeededException)
        {
            return FuelAskedFor(visit);
        }
    }
}

/// <summary>A rule whose one subject is the whole visit.</summary>
/// <typeparam name="TVisit">What the rules see of a visit.</typeparam>
public abstract class WholeVisitRule<TVisit> : FirstPassRule<TVisit>
    where TVisit : JudgedVisit
{
    private readonly UsualJudgements _ofVisit = new();

    /// <summary>Pointer of what the rule is about; empty for the visit as a whole.</summary>
    protected virtual string SubjectPointer => "";

    /// <summary>Judges the visit.</summary>
    protected abstract Verdict Assess(TVisit visit, Look look);

    private protected sealed override Judgement? JudgementOn(JudgedVisit visit, Look look)
    {
        try
        {
            return _ofVisit.Of(SubjectPointer, Assess((TVisit)visit, look.At(SubjectPointer)));
        }
        catch (FuelNeededException)
        {
            return new Judgement(SubjectPointer, FuelAskedFor(visit));
        }
    }
}

/// <summary>Judgements on one and the same subject: a plain pass, and "not applicable", are the same object for every visit.</summary>
internal sealed class UsualJudgements
{
    private Judgement? _pass;
    private Judgement? _notApplicable;

    public Judgement Of(string subject, Verdict verdict)
    {
        if (verdict == Verdict.QuietPass)
            return _pass ??= new Judgement(subject, verdict);
        if (verdict == Verdict.QuietlyNotApplicable)
            return _notApplicable ??= new Judgement(subject, verdict);
        return new Judgement(subject, verdict);
    }
}
