using Findings;
using Kernel;
using Visits;

namespace Rules.Situation;

[Id("danger-stands"), Title("A danger about which nothing was done stands"), Topic(Topics.UnsafeSituation), Coverage(Coverage.Full, "every danger is held against all that was done")]
public sealed class DangerStandsRule : SituationRule
{
    public override void Define()
    {
        Visit visit = default!;
        FoundDanger danger = default!;
        Priority(Leaves);
        When()
            .Match(() => visit)
            .Match(() => danger)
            .Not<DealtWith>(dealt => dealt.Danger == danger);
        Then().Do(_ => Say(danger, visit));
    }

    private static void Say(FoundDanger danger, Visit visit)
    {
        // A gas joint that nobody proved may be tight: nobody can say.
        var state = danger.RuleId == RuleIds.DisturbedGasJointProved ? DangerState.NotExcluded : DangerState.Standing;
        var by = danger.AnsweredBy is [var first, ..] ? first : null;
        visit.Dangers.Add(danger.As(state, handled: false, by));
    }
}
