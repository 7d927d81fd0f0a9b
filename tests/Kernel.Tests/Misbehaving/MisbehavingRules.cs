using Findings;
using Records;
using Rules;
using Visits;

namespace Kernel.Tests.Misbehaving;

[Id("throws-in-condition"), Topic(Topics.Water), Why("made up"), Title("throws while it judges"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class ThrowsWhileJudgingRule : VisitRule
{
    protected override Verdict Assess(Visit visit, Look look) => throw new InvalidOperationException("made to throw");
}

[Id("throws-on-second"), Topic(Topics.Water), Why("made up"), Title("throws at its second subject"), CommonPractice, Coverage(Coverage.Full, "made up"), Expects("/disturbedJoints")]
public sealed class ThrowsOnSecondSubjectRule : ComplianceRule<int>
{
    protected override IEnumerable<Subject<int>>? Subjects(Visit visit) => [new("/disturbedJoints/0", 0), new("/disturbedJoints/1", 1)];

    protected override Verdict Assess(int subject, Visit visit, Look look) =>
        subject == 0 ? look.Unsafe($"said before the failure") : throw new InvalidOperationException("made to throw");
}

[Id("throws-in-inference"), Topic(Topics.UnsafeSituation), Why("made up"), Title("throws over findings"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class ThrowsInInferenceRule : InferenceRule
{
    public override void Define()
    {
        Visit visit = default!;
        Finding finding = default!;
        When().Match(() => visit).Match(() => finding, f => Throw(f));
        Then().Do(context => Conclude(context, visit, "", Visit.LookAt("").Advisory($"never said")));
    }

    private static bool Throw(Finding finding) => throw new InvalidOperationException($"made to throw at {finding.RuleId}");
}

[Id("asks-unknown-limit"), Topic(Topics.Water), Why("made up"), Title("asks for a limit that nobody set"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class AsksForAnUnknownLimitRule : VisitRule
{
    protected override Verdict Assess(Visit visit, Look look) => look.Pass($"{visit.Limits["no-such-limit"].Max}");
}

[Id("cites-what-nobody-listed"), Topic(Topics.Water), Why("made up"), Title("cites a clause without a subject"), Cites("GSIUR-1998", "99(9)"), Coverage(Coverage.Full, "made up")]
public sealed class CitesWhatNobodyListedRule : VisitRule
{
    protected override Verdict Assess(Visit visit, Look look) => look.Pass($"never asked");
}

[Id("nameless-topic"), Topic("gossip"), Why("made up"), Title("has a topic that nobody knows"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class UnknownTopicRule : VisitRule
{
    protected override Verdict Assess(Visit visit, Look look) => look.Pass($"never asked");
}

public sealed class RuleWithoutMetadata : VisitRule
{
    protected override Verdict Assess(Visit visit, Look look) => look.Pass($"never asked");
}

/// <summary>Finds fault when it is asked first, and nothing when it is asked for its evidence.</summary>
[Id("says-two-things"), Topic(Topics.Water), Why("made up"), Title("says two things of one record"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class SaysTwoThingsRule : VisitRule
{
    private int _asked;

    protected override Verdict Assess(Visit visit, Look look) => _asked++ == 0 ? look.Unsafe($"made to say so") : look.Pass($"made to say so");
}

/// <summary>Finds fault when it is asked first, and throws when it is asked for its evidence.</summary>
[Id("throws-when-asked-again"), Topic(Topics.Water), Why("made up"), Title("throws when it is asked again"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class ThrowsWhenAskedAgainRule : VisitRule
{
    private int _asked;

    protected override Verdict Assess(Visit visit, Look look) => _asked++ == 0 ? look.Advisory($"made to say so") : throw new InvalidOperationException("made to throw");
}

[Id("throws-while-called"), Topic(Topics.Paperwork), Why("made up"), Title("throws while the visit is asked whether it calls"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class ThrowsWhileCalledRule() : VisitCallRule<Visit>("/jobType")
{
    public override IReadOnlyList<Call> Calls => [];

    protected override bool IsCalledBy(Visit visit) => throw new InvalidOperationException("made to throw");
}

[Id("throws-while-calling"), Topic(Topics.Paperwork), Why("made up"), Title("throws while it calls for something"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class ThrowsWhileCallingRule() : VisitCallRule<Visit>("/jobType")
{
    public override IReadOnlyList<Call> Calls { get; } = [new Call<Visit>(Weight.Must, [Part.Parts]).Only("it throws", _ => throw new InvalidOperationException("made to throw"))];

    protected override bool IsCalledBy(Visit visit) => true;
}

[Id("throws-while-inferring"), Topic(Topics.Paperwork), Why("made up"), Title("throws while it infers"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class ThrowsWhileInferringRule : DutyFactRule<Visit, TouchedPart>
{
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit) => throw new InvalidOperationException("made to throw");
}

[Id("throws-while-chaining"), Topic(Topics.Paperwork), Why("made up"), Title("throws while a fact is asked whether it calls"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class ThrowsWhileChainingRule : FactCallRule<TouchedPart>
{
    public override IReadOnlyList<Call> Calls => [];

    protected override bool IsCalledBy(TouchedPart what) => throw new InvalidOperationException("made to throw");
}

[Id("calls-for-what-nobody-named"), Topic(Topics.Paperwork), Why("made up"), Title("calls for a part of which no kind is named"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class CallsForWhatNobodyNamedRule() : VisitCallRule<Visit>("/jobType")
{
    public override IReadOnlyList<Call> Calls { get; } = [new Call<Visit>(Weight.Must, ["nowhere/part"])];

    protected override bool IsCalledBy(Visit visit) => true;
}

/// <summary>Neither infers nor calls.</summary>
[Id("of-no-kind"), Topic(Topics.Paperwork), Why("made up"), Title("is of no kind that the engine asks"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class OfNoKindRule : DutyRule;

[Id("throws-in-situation"), Topic(Topics.UnsafeSituation), Why("made up"), Title("throws while dangers are inferred"), CommonPractice, Coverage(Coverage.Full, "made up")]
public sealed class ThrowsInSituationRule : SituationRule
{
    public override void Define()
    {
        Visit visit = default!;
        Priority(Judges);
        When().Match(() => visit);
        Then().Do(_ => Throw());
    }

    private static void Throw() => throw new InvalidOperationException("made to throw");
}
