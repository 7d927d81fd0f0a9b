using Kernel;
using Records;
using Rules.Duties.Work;

namespace Rules.Duties;

[Id("work-on-the-appliance"), Title("work on the boiler"), Cites("GSIUR-1998", "26(9)")]
public sealed class WorkOnTheApplianceRule : WorkCallRule
{
    public override IReadOnlyList<Call> Calls { get; } =
        [Owe.Must(Part.Flue, Part.FlueEffective, Part.Air, Part.Draught, Part.PressureOrRate, Part.SafetyDevices).Only("it was more than a removal", visit => !visit.IsRemoval())];

    protected override bool IsCalledBy(TouchedPart what) => what is not (TouchedPart.Pipework or TouchedPart.Controls);
}
