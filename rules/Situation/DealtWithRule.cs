using Findings;
using Kernel;
using NRules.RuleModel;
using Visits;
using Wire;

namespace Rules.Situation;

/// <summary>A rule that says of a danger that something which counts was done about it.</summary>
public abstract class DealtWithRule : SituationRule
{
    /// <summary>What became of the danger.</summary>
    protected abstract DangerState State { get; }

    /// <summary>Does <paramref name="recorded"/> show that of the danger that <paramref name="finding"/> shows?</summary>
    protected abstract bool Shows(RecordedDefect recorded, Finding? finding, Visit visit);

    /// <inheritdoc />
    public override void Define()
    {
        Visit visit = default!;
        FoundDanger danger = default!;
        Priority(Judges);
        When()
            .Match(() => visit)
            .Match(() => danger, d => IsDealtWith(d, visit));
        Then().Do(context => Say(context, danger, visit));
    }

    private bool IsDealtWith(FoundDanger danger, Visit visit) => danger.AnsweredBy.Any(recorded => Shows(recorded, danger.Finding, visit));

    private void Say(IContext context, FoundDanger danger, Visit visit)
    {
        var by = danger.AnsweredBy.First(recorded => Shows(recorded, danger.Finding, visit));
        visit.Dangers.Add(new Danger { RuleId = danger.RuleId, Subject = danger.Subject, State = State, Defect = by.Pointer, IsolatedAt = WireNames.Of(by.Defect.IsolatedAt) });
        context.Insert(new DealtWith(danger, State, by));
    }
}
