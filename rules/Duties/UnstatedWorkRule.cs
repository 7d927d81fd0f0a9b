using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("unstated-work"), Title("a repair that does not say what was worked on"), Cites("GSIUR-1998", "26(9)")]
public sealed class UnstatedWorkRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.IsARepairWithoutWord());
        Then().Do(_ => Owe(visit, Weight.Must, "/work/touched", Part.Flue, Part.FlueEffective, Part.Air, Part.Draught, Part.PressureOrRate, Part.SafetyDevices));
    }
}
