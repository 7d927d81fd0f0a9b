using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.TightnessGauge), Topic(Topics.Tightness), Cites("IGEM-UP-1B", "perceptible movement")]
[Title("The gauge of a tightness test can show the movement that counts")]
[Why("Nothing shows on a display between one step and the next, so a coarse gauge can sit still while gas escapes. No movement on such a gauge says nothing about the pipework.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Uses(LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.WaterGaugeStep)]
[Expects("/tightnessTests")]
[Coverage(Coverage.Full, "kind and step of the gauge are recorded")]
public sealed class TightnessGaugeRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        if (look.Lacks(test.Gauge, out var gauge) | look.Lacks(test.GaugeResolutionMbar, out var step))
            return look.Missing();

        // On a water gauge the eye reads between the marks; a display shows nothing between its steps.
        var movement = Movement.PerceptibleOn(test, visit);
        var widest = gauge == PressureGaugeKind.Water ? visit.Limits[LimitIds.WaterGaugeStep] : movement;
        return widest.Allows(step)
            ? look.Pass($"the {gauge} gauge with steps of {step} mbar shows a movement of {movement.Max} mbar").Against(movement)
            : look.Missing($"a gauge with steps of {step} mbar cannot show a movement of {movement.Max} mbar",
                $"{look.Subject}/gaugeResolutionMbar")
                .Against(widest, step).Advise("Repeat the test with a finer gauge.");
    }
}
