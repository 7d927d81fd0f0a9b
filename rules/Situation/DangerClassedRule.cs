using Findings;
using Kernel;
using Rules.UnsafeSituation;
using Visits;

namespace Rules.Situation;

[Id("danger-classed"), Title("The engineer classed a defect as a danger that nothing else in the record shows"), Topic(Topics.UnsafeSituation), Coverage(Coverage.Full, "the record states it")]
public sealed class DangerClassedRule : SituationRule
{
    public override void Define()
    {
        RecordedDefect defect = default!;
        Priority(Finds);
        When()
            .Match(() => defect, d => d.IsDangerous)
            .Not<Finding>(f => DangerWords.IsObserved(f), f => defect.AnswersAtItsPlace(f));
        Then().Do(context => context.Insert(new FoundDanger(null, new[] { defect })));
    }
}
