using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.DefectClassed), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Title("The engineer classes each recorded defect; one that lets gas or products of combustion out is not classed as other while it stands")]
[Why("How dangerous a defect is decides what is done before leaving, from a word to the customer to cutting off the gas. Left unclassified, that decision falls to somebody who never saw it.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class DefectClassedRule : DefectRule
{
    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        if (look.Lacks(defect.Class, out var classed))
        {
            return look.Missing($"the defect is not classed")
                .Advise("Class the situation by the unsafe-situations procedure; the competent person on site decides.");
        }

        if (classed != DefectClass.Other || look.Note(defect.Action) == DefectAction.Rectified)
            return look.Pass($"the engineer classed the defect as {classed}");

        var mechanism = look.Note(defect.Mechanism);
        return mechanism is DefectMechanism.GasLeak or DefectMechanism.ProductsNotRemoved
            ? look.Missing($"the defect has the mechanism {mechanism}, it is not recorded as put right, and it is classed as {classed}", $"{look.Subject}/class")
                .Warn(Cautions.DangerStands)
                .Advise("Review the class by the unsafe-situations procedure, make it safe with permission, and report an escape to the gas emergency provider.")
            : look.Advisory($"a defect classed as {classed} is not recorded as put right")
                .Advise("Put it right, or make sure that the responsible person knows of it; review the class where it could endanger anyone.");
    }
}
