using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.WorkNoted), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)"), CommonPractice]
[Title("The record notes the work done and any remedial action")]
[Why("What was cleaned, adjusted or replaced is forgotten within weeks, and the next engineer needs it to make sense of a reading that has moved. A landlord's record must state any remedial action.")]
[Serves(Part.LandlordItems)]
[Serves(Part.Paper, AtMost = Weight.Should)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class WorkNotedRule : StatementRule
{
    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.WorkNoted, out var isNoted) ? look.Missing() : Stated(isNoted, "the work done and any remedial action", look);
}
