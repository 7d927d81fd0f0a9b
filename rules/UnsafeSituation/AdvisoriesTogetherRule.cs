using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.AdvisoriesTogether), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), CommonPractice]
[Title("Defects of combustion, flue and air that are harmless alone are classed together")]
[Why("Slightly raised CO, a doubtful flue and a vent barely large enough can add up to combustion products in the room. Each alone falls short of unsafe, so somebody has to judge the boiler as a whole.")]
[Uses(LimitIds.AdvisoriesTogether)]
[Coverage(Coverage.MayUnderReport, "advisories are counted and not weighed")]
public sealed class AdvisoriesTogetherRule : InferenceRule
{
    public override void Define()
    {
        Visit visit = default!;
        IEnumerable<Finding> advisories = default!;

        When()
            .Match(() => visit)
            .Query(() => advisories, q => q
                .Match<Finding>(f => DangerWords.IsAdviceOnAirPath(f))
                .Collect())
            .Having(() => AreMany(visit, advisories));

        Then()
            .Do(context => Conclude(context, visit, "", Review(visit, advisories)));
    }

    private bool AreMany(Visit visit, IEnumerable<Finding> advisories) => !LimitOf(visit, LimitIds.AdvisoriesTogether).Allows(RulesOf(visit, advisories).Count);

    private Verdict Review(Visit visit, IEnumerable<Finding> advisories)
    {
        var rules = RulesOf(visit, advisories);
        return Visit.LookAt("").Advisory($"{rules.Count} rules on combustion, flue and air advise on this appliance ({string.Join(", ", rules)}); together they may endanger")
            .Against(LimitOf(visit, LimitIds.AdvisoriesTogether), rules.Count).Warn(Cautions.CarbonMonoxide)
            .Advise("Review the class of the situation as a whole by the unsafe-situations procedure.");
    }

    private static List<string> RulesOf(Visit visit, IEnumerable<Finding> advisories) =>
        [.. advisories.Where(advisory => !DangerWords.IsOnlyUnsure(advisory, visit)).Select(advisory => advisory.RuleId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
