using Findings;
using Kernel;
using NRules.RuleModel;
using Visits;

namespace Rules.Situation;

/// <summary>A rule that says of a danger what was done about it, and whether that counts.</summary>
[Topic(Topics.UnsafeSituation), Coverage(Coverage.Full, "the record states what was done")]
public abstract class DealtWithRule : SituationRule
{
    /// <summary>What became of the danger.</summary>
    protected abstract DangerState State { get; }

    /// <summary>Was that done, by <paramref name="recorded"/>, about the danger that <paramref name="finding"/> shows?</summary>
    protected abstract bool WasDone(RecordedDefect recorded, Finding? finding, Visit visit);

    /// <summary>Was it done so that it counts?</summary>
    protected abstract bool Counts(RecordedDefect recorded, Finding? finding, Visit visit);

    /// <inheritdoc />
    public override void Define()
    {
        Visit visit = default!;
        FoundDanger danger = default!;
        Priority(Judges);
        When()
            .Match(() => visit)
            .Match(() => danger, d => WasDone(d, visit));
        Then().Do(context => Say(context, danger, visit));
    }

    private bool WasDone(FoundDanger danger, Visit visit) => danger.AnsweredBy.Any(recorded => WasDone(recorded, danger.Finding, visit));

    private void Say(IContext context, FoundDanger danger, Visit visit)
    {
        var done = danger.AnsweredBy.Where(recorded => WasDone(recorded, danger.Finding, visit)).ToList();
        var counting = done.Find(recorded => Counts(recorded, danger.Finding, visit));
        var by = counting ?? done[0];
        visit.Dangers.Add(danger.As(State, counting is not null, by));
        context.Insert(new DealtWith(danger, counting is not null));
    }
}
