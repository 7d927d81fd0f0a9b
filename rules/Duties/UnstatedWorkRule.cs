using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("unstated-work"), Title("a repair that does not say what was worked on"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.MayOverReport, "a repair that touched nothing, and does not say so, calls as well")]
public sealed class UnstatedWorkRule() : CallRule("/work/touched")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Flue, Part.FlueEffective, Part.Air, Part.Draught, Part.PressureOrRate, Part.SafetyDevices)];

    protected override bool IsCalledBy(Visit visit) => visit.IsARepairWithoutWord();
}
