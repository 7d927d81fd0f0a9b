using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.HeatInput;

[Id(RuleIds.HeatInput), Topic(Topics.HeatInput), Cites("GSIUR-1998", "26(9)(c)"), CommonPractice]
[Title("The heat input at maximum rate is that of the data plate, or that to which the boiler is range rated")]
[Why("An overgassed boiler can run short of air and make CO; an undergassed one leaves the house cold. A fault in supply, setting or gas valve often shows here first.")]
[Serves(Part.Rate)]
[Serves(Part.Rate, AtMost = Weight.Should, Of = "/gasSupply/meterDisplayWorks")]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2,
    LimitIds.HeatInputDeviation, LimitIds.HeatInputDeviationWide, LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes,
    LimitIds.CalibrationMonths, LimitIds.CoPpm, LimitIds.MaximumRateLoad)]
[Coverage(Coverage.MayOverReport, "sources conflict on the tolerance")]
public sealed class HeatInputRule : VisitRule
{
    private const string Cause = "Find the cause: range rating or part load, gas valve setting, supply pressure, meter reading, calorific value.";

    protected override string SubjectPointer => "/gasSupply/rate";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.Record.GasSupply?.Rate is not { } rate || visit.GasRateCounts() == false)
            return visit.NoHeatInput(look);

        // A range-rated boiler is held against its own figure, never against more than the plate.
        var rangeRated = look.Note(visit.Record.Appliance.RangeRatedInputKw);
        var volumeFt3 = look.Note(visit.Record.GasSupply?.Rate?.VolumeFt3);
        if (look.Lacks(visit.Record.Appliance.RatedInputBasis, out var basis) | look.Lacks(visit.Record.Appliance.RatedInputKw, out var rated)
            | look.Lacks(visit.Record.GasSupply?.Rate?.AtMaximum, out _) | look.Lacks(visit.Record.GasSupply?.Rate?.OtherAppliancesOff, out _)
            | look.Lacks(visit.Record.GasSupply?.Rate?.WarmMinutes, out _) | look.Lacks(visit.Record.GasSupply?.Rate?.Seconds, out _)
            | look.Lacks(visit.Record.GasSupply?.MeterDisplayWorks, out _) | look.Lacks(visit.Record.GasSupply?.Rate?.CalorificValueMjPerM3, out var calorificValue)
            | (volumeFt3 is null && look.Lacks(visit.Record.GasSupply?.Rate?.VolumeM3, out _)))
        {
            return look.Missing();
        }

        if (rangeRated > rated)
            return look.Missing($"the boiler is recorded as range rated to {rangeRated} kW, above the {rated} kW of its plate",
                "/appliance/rangeRatedInputKw");
        if (visit.DeviationPercent(basis) is not { } deviation)
        {
            return calorificValue is < 10 or > 150
                ? look.Missing($"no fuel gas has a calorific value of {calorificValue} MJ/m3", "/gasSupply/rate/calorificValueMjPerM3")
                : look.Missing($"no boiler can have the recorded gas rate", rate.VolumeM3 is null ? "/gasSupply/rate/volumeFt3" : "/gasSupply/rate/volumeM3");
        }

        var plate = rangeRated ?? rated;
        var measured = plate * (1 + deviation / 100);
        FormattableString found = $"the measured heat input is {measured:0.0} kW {basis}, {deviation:+0.0;-0.0;0.0} % from {plate} kW";
        var limit = visit.Limits[LimitIds.HeatInputDeviation];
        var wide = visit.Limits[LimitIds.HeatInputDeviationWide];
        if (limit.Allows(deviation))
            return look.Pass($"{found}").Against(limit, deviation);
        if (wide.Allows(deviation))
            return look.Advisory($"{found}, outside {limit.Min} to +{limit.Max} %").Against(limit, deviation).Advise(Cause);

        return visit.BurnsRight() switch
        {
            false => look.Unsafe($"{found}, outside {wide.Min} to +{wide.Max} %, and the combustion is out of limit as well")
                .Against(wide, deviation).Warn(Cautions.CarbonMonoxide).Advise(Cause),
            true => look.Advisory($"{found}, far outside {limit.Min} to +{limit.Max} %; the combustion is within its limit")
                .AndMissing(visit.AskedUnlessADefect("/gasSupply/rate", "/gasSupply/rate", Topics.HeatInput, Topics.GasPressure))
                .Against(wide, deviation).Warn(Cautions.MakerDecides).Advise($"Measure again at maximum rate. {Cause}"),
            null => look.Missing($"{found}, outside {wide.Min} to +{wide.Max} %, and no flue readings that count tell whether it burns well",
                "/combustion/readings")
                .Against(wide, deviation).Warn(Cautions.CarbonMonoxide).Advise(Cause),
        };
    }
}
