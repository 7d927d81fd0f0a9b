using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("thermocouple"), Title("a thermocouple was fitted"), Topic(Topics.SafetyDevices), Cites("GSIUR-1998", "26(9)(d)")]
public sealed class ThermocoupleRule() : CallRule("/partsFitted")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.SafetyDevices, Part.Flue, Part.Air, Part.FlueEffective, Part.PressureOrRate)];

    protected override bool IsCalledBy(Visit visit) => visit.FittedAThermocouple();
}
