using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.RecordSigned), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)"), CommonPractice]
[Title("The engineer signs the record")]
[Why("An unsigned record has nobody behind it when its findings are questioned. On a landlord's record regulation 36 requires the signature of whoever made the check, and practice is to sign every other one too.")]
[Serves(Part.LandlordItems)]
[Serves(Part.Paper, AtMost = Weight.Should)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class RecordSignedRule : StatementRule
{
    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.EngineerSigned, out var isSigned) ? look.Missing() : Stated(isSigned, "the engineer's signature", look);
}
