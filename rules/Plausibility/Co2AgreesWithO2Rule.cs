using Calculations;
using Findings;
using Kernel;
using Records;
using Rules.Combustion;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.Co2AgreesWithO2), Topic(Topics.Plausibility), CommonPractice]
[Title("The CO2 reading goes with the O2 reading for this fuel")]
[Why("In flue gas CO2 goes up as O2 comes down, so a pair that does not match points to a typing slip, the wrong fuel on the analyser or a faulty cell. A wrong CO2 spoils the CO/CO2 ratio and can hide poor combustion.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.Co2FromO2Deviation)]
[Expects("/combustion/readings")]
[Coverage(Coverage.MayOverReport, "a gas far from the average gives other figures")]
public sealed class Co2AgreesWithO2Rule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.Readings;

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.Co2Percent, out var co2) | look.Lacks(reading.O2Percent, out var o2))
            return look.Missing();

        var limit = visit.Limits[LimitIds.Co2FromO2Deviation];
        var most = visit.GasFamily.Co2MaxPercent();
        if (co2 > most + limit.Max)
        {
            return look.Missing($"no flue gas of {visit.Fuel} holds {co2} % CO2, the most is {most} %: nothing that rests on this reading counts", $"{look.Subject}/co2Percent")
                .Advise("Check the fuel set on the analyser and read again.");
        }

        // The maximum CO2 of each fuel rests on this oxygen content of air.
        const decimal Air = OxygenInAir.PhysicalPercent;
        if (o2 > Air)
            return look.Advisory($"{o2} % O2 is more than air holds").Advise("Zero the analyser in outside air and read again.");

        var implied = FlueGas.Co2FromO2Percent(o2, visit.GasFamily, Air);
        var apart = Math.Abs(co2 - implied);
        if (limit.Allows(apart))
            return look.Pass($"{co2} % CO2 goes with {o2} % O2, which implies {implied:0.00} %").Against(limit, apart);

        // The O2 may be the true one, and the verdict on the ratio rests on the CO2: where that is a danger already, or the reading one of
        // before the work, it cannot get worse.
        FormattableString message = $"{co2} % CO2 does not go with {o2} % O2, which implies {implied:0.00} % for {visit.Fuel}, at most {limit.Max} apart";
        var isWorse = reading.Stage != WorkStage.BeforeWork && look.Note(reading.CoPpm) is { } co
            && co > CoAt(visit.RatioLimit(), implied) && co <= CoAt(visit.Limits[LimitIds.CoCo2RatioCeiling], co2);
        return (isWorse
            ? look.Missing($"{WireText.Sentence(message)}; by that the {reading.CoPpm} ppm CO beside it would be too much, so one of the three is wrong", $"{look.Subject}/co2Percent", $"{look.Subject}/o2Percent")
                .Warn(Cautions.CarbonMonoxide)
            : look.Advisory(message))
            .Against(limit, apart).Advise("Check the typing and the fuel set on the analyser, then read again.");
    }

    private static decimal? CoAt(Limit ratio, decimal co2Percent) => ratio.Max * co2Percent * 10_000;
}
