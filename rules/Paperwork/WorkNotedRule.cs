using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Paperwork;

[Name(RuleIds.WorkNoted), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)"), CommonPractice]
[Description("The record notes the work done and any remedial action")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class WorkNotedRule : StatementRule
{
    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.WorkNoted, out var isNoted) ? look.Missing() : Stated(isNoted, "the work done and any remedial action", look);
}
