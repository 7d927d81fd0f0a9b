using Findings;
using Kernel;
using Visits;

namespace Rules.HeatInput;

[Id(RuleIds.CalorificValue), Topic(Topics.HeatInput), CommonPractice]
[Title("The calorific value used is recorded and one that the fuel can have, gross")]
[Why("Heat input is volume times calorific value, so an error in either goes straight into the result. A net value taken for gross can make a boiler look short of gas and hide one that is overgassed.")]
[Serves(Part.Rate)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2,
    LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes, LimitIds.CalorificValue,
    LimitIds.CalibrationMonths, LimitIds.CoPpm, LimitIds.MaximumRateLoad)]
[Coverage(Coverage.Full, "the value is held against the range of its fuel")]
public sealed class CalorificValueRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/rate/calorificValueMjPerM3";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.Record.GasSupply?.Rate is null)
            return visit.NoHeatInput(look);
        if (look.Lacks(visit.Record.GasSupply?.Rate?.CalorificValueMjPerM3, out var value))
            return look.Missing();

        var range = visit.Limits[LimitIds.CalorificValue];
        return range.Allows(value)
            ? look.Pass($"{value} MJ/m3 is within {range.Min} to {range.Max} MJ/m3").Against(range, value)
            : look.Advisory($"{value} MJ/m3 is outside {range.Min} to {range.Max} MJ/m3, what {visit.Fuel} has gross; the heat input rests on it")
                .Against(range, value).Advise("Take the gross calorific value from the supplier's figure for the area, and mind the unit.");
    }
}
