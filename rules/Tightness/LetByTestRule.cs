using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.LetByTest), Topic(Topics.Tightness), Cites("IGEM-UP-1B", "let-by")]
[Title("Before a tightness test the emergency control valve is shown to hold: no rise, and no fall, at low pressure")]
[Why("An emergency control valve that lets by tops up the pressure during the test and hides the leak that is being looked for. Until the valve is shown to hold, a steady gauge proves nothing.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Uses(LimitIds.LetByPressure, LimitIds.LetByShare, LimitIds.LetByMinutes, LimitIds.LetByRise, LimitIds.PerceptibleMovementWater,
    LimitIds.PerceptibleMovementElectronic)]
[Expects("/tightnessTests")]
[Coverage(Coverage.MayUnderReport, "for liquefied gas no band of pressure is known, only that it lies well below the test pressure")]
public sealed class LetByTestRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        // What voids the test is said first, however much is absent besides.
        var riseLimit = visit.Limits[LimitIds.LetByRise];
        var lacks = look.Lacks(test.LetByPressureMbar, out var pressure) | look.Lacks(test.LetByMinutes, out var minutes)
            | look.Lacks(test.LetByRiseMbar, out var rise);
        if (!riseLimit.Allows(rise))
        {
            return look.Missing($"the gauge rose by {rise} mbar during the let-by test: the valve passes gas and holds the gauge up, so the tightness test is void",
                $"{look.Subject}/letByRiseMbar")
                .Against(riseLimit, rise).Warn(Cautions.EscapingGas)
                .Advise("Report the passing valve to the gas emergency provider (LPG: to the supplier), and test again once it holds.");
        }

        var none = Movement.PerceptibleOn(test, visit);
        if (rise < -none.Max)
        {
            return look.Missing($"the gauge fell by {-rise} mbar during the let-by test, more than {none.Max} mbar: gas may be escaping, and a fall hides a passing valve, so the tightness test is void",
                $"{look.Subject}/letByRiseMbar")
                .Against(none, -rise).IsALeak();
        }

        // For LPG the standard has the same principle and no band that could be read.
        if (test.LetByPressureMbar is not null && visit.BurnsNaturalGas && visit.Limits[LimitIds.LetByPressure] is var band && !band.Allows(pressure))
        {
            return look.Missing($"the let-by test was made at {pressure} mbar, outside {band.Min} to {band.Max} mbar, and shows nothing",
                $"{look.Subject}/letByPressureMbar")
                .Against(band, pressure).Advise("Repeat the let-by test and the tightness test.");
        }

        if (test.LetByPressureMbar is not null && !visit.BurnsNaturalGas && (pressure <= 0 || pressure > test.TestPressureMbar - none.Max))
        {
            return look.Missing(
                    pressure <= 0
                        ? (FormattableString)$"the let-by test began at {pressure} mbar, without any pressure, and shows nothing"
                        : $"the let-by test began at {pressure} mbar and the test at {test.TestPressureMbar} mbar: that leaves no room for a rise, so it shows nothing",
                    $"{look.Subject}/letByPressureMbar")
                .Advise("Repeat the let-by test well below the test pressure, and the tightness test.");
        }

        var minutesLimit = visit.Limits[LimitIds.LetByMinutes];
        if (test.LetByMinutes is not null && !minutesLimit.Allows(minutes))
        {
            return look.Missing($"the let-by test lasted {minutes} min, less than {minutesLimit.Min} min", $"{look.Subject}/letByMinutes")
                .Against(minutesLimit, minutes).Advise("Repeat the let-by test and the tightness test.");
        }

        if (lacks)
            return look.Missing();
        if (!visit.BurnsNaturalGas && test.TestPressureMbar is > 0 and { } full && visit.Limits[LimitIds.LetByShare] is var most
            && Movement.ShareOf(pressure, full) is var share && !most.Allows(share))
        {
            return look.Advisory($"no rise at {pressure} mbar in {minutes} min, and that is {share:0} % of the {full} mbar of the test: a valve that passes a little shows late so high")
                .Against(most, share).Advise("Begin the let-by test well below the test pressure.");
        }

        return look.Pass($"no rise at {pressure} mbar in {minutes} min").Against(riseLimit, rise);
    }
}
