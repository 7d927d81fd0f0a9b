using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Paperwork;

[Name(RuleIds.RecordSigned), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)"), CommonPractice]
[Description("The engineer signs the record")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class RecordSignedRule : StatementRule
{
    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.EngineerSigned, out var isSigned) ? look.Missing() : Stated(isSigned, "the engineer's signature", look);
}
