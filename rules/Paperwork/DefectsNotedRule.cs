using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Paperwork;

[Name(RuleIds.DefectsNoted), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)"), Cites("GSIUR-1998", "26(9)")]
[Description("The record notes the defects, or that there were none")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class DefectsNotedRule : StatementRule
{
    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.DefectsNotedOrNone, out var areNoted) ? look.Missing() : Stated(areNoted, "the defects, or that there were none", look);
}
