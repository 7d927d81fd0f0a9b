using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-shown"), Title("What was measured or seen shows a danger"), Topic(Topics.UnsafeSituation), Coverage(Coverage.Full, "it takes up every danger that a demand finds")]
public sealed class DangerShownRule : SituationRule
{
    public override void Define()
    {
        Visit visit = default!;
        Finding finding = default!;
        Priority(Finds);
        When()
            .Match(() => visit)
            .Match(() => finding, f => Answering.IsObserved(f));
        Then().Do(context => context.Insert(new FoundDanger(finding, visit.RecordedDefects.Where(recorded => recorded.Answers(finding)).ToList())));
    }
}
