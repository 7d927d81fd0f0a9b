using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.HeatInput;

[Id(RuleIds.GasRateMeasurement), Topic(Topics.HeatInput), CommonPractice]
[Title("The gas rate is timed long enough, at maximum rate, with the boiler warm and all other appliances off")]
[Why("Another appliance drawing gas, a boiler turning itself down or a test cut short all give a rate that is not the boiler's. Acting on it can put a good setting wrong.")]
[Serves(Part.Rate)]
[Serves(Part.Rate, AtMost = Weight.Should, Of = "/gasSupply/meterDisplayWorks")]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2,
    LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes,
    LimitIds.CalibrationMonths, LimitIds.CoPpm, LimitIds.MaximumRateLoad)]
[Coverage(Coverage.MayUnderReport, "whole turns of an imperial dial are no member")]
public sealed class GasRateMeasurementRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/rate";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.Record.GasSupply?.Rate is not { } rate)
            return visit.NoHeatInput(look);
        if (look.Lacks(visit.Record.GasSupply?.Rate?.Seconds, out var seconds) | look.Lacks(visit.Record.GasSupply?.Rate?.WarmMinutes, out var warm)
            | look.Lacks(visit.Record.GasSupply?.Rate?.AtMaximum, out var atMaximum)
            | look.Lacks(visit.Record.GasSupply?.Rate?.OtherAppliancesOff, out var othersOff)
            | look.Lacks(visit.Record.GasSupply?.MeterDisplayWorks, out var canBeRead))
        {
            return look.Missing();
        }

        var secondsLimit = visit.Limits[LimitIds.GasRateSeconds];
        var warmLimit = visit.Limits[LimitIds.GasRateWarmMinutes];
        if (visit.GasRateCounts() == true)
            return look.Pass($"timed for {seconds} s at maximum rate after {warm} min, all else off")
                .Against(secondsLimit, rate.VolumeFt3 is null ? seconds : null);

        List<string> faults = [];
        if (!canBeRead)
            faults.Add("the meter cannot be read");
        if (!atMaximum)
            faults.Add("the boiler was not at maximum rate");
        if (!othersOff)
            faults.Add("other appliances were on");
        if (!warmLimit.Allows(warm))
            faults.Add($"{WireText.Of(warm)} min at maximum are fewer than {WireText.Of(warmLimit.Min!)}");
        var isShort = rate.VolumeFt3 is null && !secondsLimit.Allows(seconds);
        if (isShort)
            faults.Add($"{WireText.Of(seconds)} s are fewer than {WireText.Of(secondsLimit.Min!)}");
        var verdict = look.Advisory($"the gas rate does not count: {string.Join(", ", faults)}")
            .Advise("Time the gas again with only this boiler on, warm and at maximum rate.");
        return isShort ? verdict.Against(secondsLimit, seconds) : warmLimit.Allows(warm) ? verdict : verdict.Against(warmLimit, warm);
    }
}
