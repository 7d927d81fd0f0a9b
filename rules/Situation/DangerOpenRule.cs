using Kernel;

namespace Rules.Situation;

[Id("danger-open"), Title("A danger is open until something was done about it that counts")]
public sealed class DangerOpenRule : SituationRule
{
    public override void Define()
    {
        FoundDanger danger = default!;
        Priority(Leaves);
        When()
            .Match(() => danger)
            .Not<DealtWith>(dealt => dealt.Counts, dealt => dealt.Danger == danger);
        Then().Do(context => context.Insert(new OpenDanger(danger)));
    }
}
