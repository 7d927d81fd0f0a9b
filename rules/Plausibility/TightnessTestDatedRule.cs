using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.TightnessTestDated), Topic(Topics.Plausibility), Cites("GSIUR-1998", "6(6)")]
[Description("No tightness test is dated after the visit, and one that proves today's work is not dated before it")]
[Expects("/tightnessTests")]
public sealed class TightnessTestDatedRule : ComplianceRule<TightnessTest>
{
    protected override IEnumerable<Subject<TightnessTest>>? Subjects(Visit visit) => visit.TightnessTests;

    protected override Verdict Assess(TightnessTest test, Visit visit, Look look)
    {
        // Undated, a test is one of this visit.
        var testedOn = look.Note(test.TestedOn) ?? visit.Date;
        if (testedOn > visit.Date)
            return look.Missing($"the tightness test is dated {testedOn}, after the visit of {visit.Date}, so it shows nothing of it", $"{look.Subject}/testedOn");

        // A job may run over several days.
        var begun = visit.Record.StartedAt?.Date ?? visit.Date;
        return testedOn < begun && look.Note(test.Stage) != WorkStage.BeforeWork
            ? look.Missing($"the tightness test is dated {testedOn}, before the work of {begun}, so it cannot prove it", $"{look.Subject}/testedOn").Warn(Cautions.EscapingGas)
            : look.Pass($"the tightness test is of {testedOn}");
    }
}
