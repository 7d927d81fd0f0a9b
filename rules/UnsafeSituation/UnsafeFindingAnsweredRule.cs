using Findings;
using NRules.Fluent.Dsl;
using RuleModel;

namespace Rules;

[Name(RuleIds.UnsafeFindingAnswered), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "34")]
[Description("Every unsafe finding is answered by a recorded defect")]
[Coverage(Coverage.MayOverReport, "a defect that names neither subject nor topic is not seen as the answer")]
public sealed class UnsafeFindingAnsweredRule : InferenceRule
{
    public override void Define()
    {
        Visit visit = default!;
        Finding finding = default!;

        When()
            .Match(() => visit)
            .Match(() => finding, f => f.Outcome == Outcome.Unsafe)
            .Not<RecordedDefect>(d => d.Answers(finding));

        Then()
            .Do(context => Conclude(context, visit, finding.Subject, Unanswered(finding)));
    }

    private static Verdict Unanswered(Finding finding) => new Look(finding.Subject)
        .Missing($"'{finding.RuleId}' is unsafe and no recorded defect answers it: class, action, label and notice are not on record", "/defects")
        .Warn(finding.Caution ?? Cautions.DangerStands)
        .Advise("Classify the situation by the unsafe-situations procedure, make it safe with permission, label it, give the notice, and record all of it.");
}
