using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.DefectDescribed), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "36(3)(c)")]
[Title("Each recorded defect is described and placed")]
[Why("A bare tick or category lets nobody repair, check or report a fault. Owner, occupier and the next engineer act on what is wrong and where, and a landlord's record must state each safety defect.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class DefectDescribedRule : DefectRule
{
    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        if (look.Lacks(defect.Description, out _))
            return look.Missing($"the record does not say what is wrong");

        return look.Note(defect.Location) is { } location
            ? look.Pass($"the defect is described and placed: {location}")
            : look.Advisory($"the record does not say where the defect is").Advise("Add the place to the description.");
    }
}
