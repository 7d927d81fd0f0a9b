using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-classed"), Title("The engineer classed a defect as a danger, of which nothing else in the record speaks or another defect speaks as well"), Topic(Topics.UnsafeSituation), Coverage(Coverage.Full, "the record states it")]
public sealed class DangerClassedRule : SituationRule
{
    public override void Define()
    {
        Visit visit = default!;
        RecordedDefect defect = default!;
        Priority(Finds);
        When()
            .Match(() => visit)
            .Match(() => defect, d => d.IsDangerous)
            .Not<Finding>(f => Answering.IsObserved(f), f => defect.IsTheOnlyWordOn(f, visit));
        Then().Do(context => context.Insert(new FoundDanger(null, new[] { defect })));
    }
}
