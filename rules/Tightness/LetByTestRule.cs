using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.LetByTest), Topic(Topics.Tightness), Cites("IGEM-UP-1B", "let-by")]
[Description("Before a tightness test the emergency control valve is shown to hold: no rise at low pressure")]
[Expects("/tightnessTests")]
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

        // For LPG the standard has the same principle and no band that could be read.
        if (test.LetByPressureMbar is not null && visit.BurnsNaturalGas && visit.Limits[LimitIds.LetByPressure] is var band && !band.Allows(pressure))
        {
            return look.Missing($"the let-by test was made at {pressure} mbar, outside {band.Min} to {band.Max} mbar, and shows nothing",
                $"{look.Subject}/letByPressureMbar")
                .Against(band, pressure).Advise("Repeat the let-by test and the tightness test.");
        }

        var minutesLimit = visit.Limits[LimitIds.LetByMinutes];
        if (test.LetByMinutes is not null && !minutesLimit.Allows(minutes))
        {
            return look.Missing($"the let-by test lasted {minutes} min, less than {minutesLimit.Min} min", $"{look.Subject}/letByMinutes")
                .Against(minutesLimit, minutes).Advise("Repeat the let-by test and the tightness test.");
        }

        return lacks ? look.Missing() : look.Pass($"no rise at {pressure} mbar in {minutes} min").Against(riseLimit, rise);
    }
}
