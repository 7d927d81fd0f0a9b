using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.PremisesUseStated), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(a)"), CommonPractice]
[Title("The record says whether the premises are owner-occupied, rented or a workplace")]
[Why("Whether a home is let decides whether a yearly check is owed by law, who must be told of a defect and who gets a copy. Unsaid, a tenant's rights can be missed without anyone noticing.")]
[Serves(Part.Left)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class PremisesUseStatedRule : VisitRule
{
    protected override string SubjectPointer => "/premises/use";

    protected override Verdict Assess(Visit visit, Look look) => look.Lacks(visit.Record.Premises?.Use, out _)
        ? look.Missing($"the record does not say how the premises are used")
        : look.Pass($"the use of the premises is recorded");
}
