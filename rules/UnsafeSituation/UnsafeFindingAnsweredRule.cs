using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Rules.Situation;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.UnsafeFindingAnswered), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "34")]
[Title("Every unsafe finding is answered by a recorded defect")]
[Why("Perhaps nobody noticed a danger that shows in the readings but not among the defects. The household goes on using the boiler, and nothing shows that they were told as regulation 34(3) requires.")]
[Serves(Part.HandleDanger)]
[Serves(Part.MadeKnown)]
[Coverage(Coverage.MayOverReport, "a defect that names neither subject nor topic is not seen as the answer")]
public sealed class UnsafeFindingAnsweredRule : InferenceRule
{
    public override void Define()
    {
        Visit visit = default!;
        IGrouping<string, FoundDanger> open = default!;

        When()
            .Match(() => visit)
            .Query(() => open, q => q
                .Match<FoundDanger>(d => DangerWords.IsUnanswered(d))
                .GroupBy(d => d.Subject));

        Then()
            .Do(context => Conclude(context, visit, open.Key, Unanswered(open.Select(danger => danger.Finding!).ToList(), open.Key)));
    }

    private static Verdict Unanswered(IReadOnlyList<Finding> open, string subject) => Visit.LookAt(subject)
        .Missing($"no recorded defect answers what is unsafe here ({string.Join(", ", open.Select(finding => finding.RuleId).Order(StringComparer.Ordinal))}): class, action, label and notice are not on record", "/defects")
        .Warn(open.OrderBy(finding => finding.RuleId, StringComparer.Ordinal).Select(finding => finding.Caution).FirstOrDefault(caution => caution is not null) ?? Cautions.DangerStands)
        .Advise("Classify the situation by the unsafe-situations procedure, make it safe with permission, label it, give the notice, and record all of it.");
}
