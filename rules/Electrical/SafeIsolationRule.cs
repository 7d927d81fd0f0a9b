using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Electrical;

[Id(RuleIds.SafeIsolation), Topic(Topics.Electrical), CommonPractice]
[Title("The electrical supply is isolated and proved dead before the case is opened")]
[Why("Mains voltage inside an open boiler can kill, and a switch in the off position proves nothing. External controls may feed a terminal of their own, so only a test at the boiler shows that it is dead.")]
[Serves(Part.Electrics)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class SafeIsolationRule : VisitRule
{
    protected override string SubjectPointer => "/electrical";

    protected override bool? Applies(Visit visit) => visit.IsMoreThanALandlordCheck;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Electrical?.IsolatedSafely, out var isolated))
            return look.Missing();

        return isolated
            ? look.Pass($"the supply was isolated and proved dead")
            : look.Advisory($"the supply was not isolated and proved dead before work inside the boiler")
                .Warn(Cautions.ElectricShock).Advise("Isolate, lock off and prove dead before opening a boiler.");
    }
}
