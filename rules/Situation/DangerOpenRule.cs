using Findings;
using Kernel;
using NRules.RuleModel;
using Visits;

namespace Rules.Situation;

[Id("danger-open"), Title("A danger is open until something was done about it that counts"), Topic(Topics.UnsafeSituation), Coverage(Coverage.Full, "every danger is held against all that was done")]
public sealed class DangerOpenRule : SituationRule
{
    public override void Define()
    {
        Visit visit = default!;
        FoundDanger danger = default!;
        Priority(Leaves);
        When()
            .Match(() => visit)
            .Match(() => danger)
            .Not<DealtWith>(dealt => dealt.Counts, dealt => dealt.Danger == danger);
        Then().Do(context => Open(context, danger, visit));
    }

    private static void Open(IContext context, FoundDanger danger, Visit visit)
    {
        visit.OpenParts.Add(Part.HandleDanger);
        context.Insert(new OpenDanger(danger));
    }
}
