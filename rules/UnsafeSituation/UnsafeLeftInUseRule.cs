using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Rules.Situation;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.UnsafeLeftInUse), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(5)"), Cites("GSIUR-1998", "34"), Cites("IGEM-G-11")]
[Title("An appliance with a danger that stands is not left in use")]
[Why("A dangerous boiler can kill while the household sleeps with the windows shut. Left on, it goes on being used, which regulation 34 forbids the responsible person to do or allow.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "findings and the state on leaving are compared")]
public sealed class UnsafeLeftInUseRule : InferenceRule
{
    private const string State = "/appliance/stateOnLeaving";

    public override void Define()
    {
        Visit visit = default!;
        IEnumerable<FoundDanger> dangers = default!;

        When()
            .Match(() => visit, v => !v.IsLeftOutOfUse)
            .Query(() => dangers, q => q
                .Match<OpenDanger>(open => open.Danger.IsOfThisAppliance)
                .Select(open => open.Danger)
                .Collect()
                .Where(found => found.Any()));

        Then()
            .Do(context => Conclude(context, visit, State, LeftInUse(visit, dangers)));
    }

    private static Verdict LeftInUse(Visit visit, IEnumerable<FoundDanger> dangers)
    {
        var look = Visit.LookAt(State);
        var rules = string.Join(", ", dangers.Select(danger => danger.RuleId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        var verdict = look.Lacks(visit.Record.Appliance.StateOnLeaving, out var state)
            ? look.Missing($"a danger stands ({rules}), and the record does not say how the appliance was left")
            : look.Unsafe($"a danger stands ({rules}), and the appliance was left {state}", dangers.Max(danger => danger.ExpectedClass));
        return verdict.Warn(Cautions.DangerStands)
            .Advise("With permission turn the appliance off, or disconnect it where it is immediately dangerous; after a refusal call the gas emergency provider or take the signed acceptance.");
    }
}
