using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("thermocouple"), Title("a thermocouple was fitted"), Cites("GSIUR-1998", "26(9)(d)")]
public sealed class ThermocoupleRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.FittedAThermocouple());
        Then().Do(_ => Owe(visit, Weight.Must, "/partsFitted", Part.SafetyDevices, Part.Flue, Part.Air, Part.FlueEffective, Part.PressureOrRate));
    }
}
