using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("work-on-the-appliance"), Title("work on the boiler"), Cites("GSIUR-1998", "26(9)")]
public sealed class WorkOnTheApplianceRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        Touched touched = default!;
        When()
            .Match(() => visit, v => !v.IsRemoval())
            .Match(() => touched, t => t.Part != TouchedPart.Pipework && t.Part != TouchedPart.Controls);
        Then().Do(_ => OweBecause(visit, Weight.Must, touched.Because, Part.Flue, Part.FlueEffective, Part.Air, Part.Draught, Part.PressureOrRate, Part.SafetyDevices));
    }
}
