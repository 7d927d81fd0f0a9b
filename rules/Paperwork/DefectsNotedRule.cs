using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.DefectsNoted), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)"), Cites("GSIUR-1998", "26(9)")]
[Title("The record notes the defects, or that there were none")]
[Why("A blank space can mean that nothing was wrong or that nobody looked. Owner and occupier learn from this entry what has to be put right, and by law a landlord's record states each safety defect.")]
[Serves(Part.LandlordItems)]
[Serves(Part.Paper, AtMost = Weight.Should)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class DefectsNotedRule : StatementRule
{
    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.DefectsNotedOrNone, out var areNoted) ? look.Missing() : Stated(areNoted, "the defects, or that there were none", look);
}
