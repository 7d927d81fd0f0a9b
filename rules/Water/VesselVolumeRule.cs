using Calculations;
using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.VesselVolume), Topic(Topics.Water), Cites("BS-EN-12828"), CommonPractice]
[Title("The expansion vessel takes the expansion of the system water up to the highest flow temperature")]
[Why("Heated water expands, and what the vessel cannot take goes out through the relief valve. Topping up brings in fresh oxygen and scale, and a valve that has lifted often never seats cleanly again.")]
[Serves(Part.SealedSystem)]
[Serves(Part.WhereRecorded, AtMost = Weight.Should, Of = "/water/vesselVolumeL")]
[Serves(Part.WhereRecorded, AtMost = Weight.Should, Of = "/water/systemVolumeL")]
[Uses(LimitIds.ReliefMargin, LimitIds.HighestFlowTemperature)]
[Coverage(Coverage.MayUnderReport, "judged only where both volumes are recorded")]
public sealed class VesselVolumeRule : WaterRule
{
    protected override string SubjectPointer => "/water/vesselVolumeL";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.VesselVolumeL, out var vessel) | look.Lacks(visit.Record.Water?.SystemVolumeL, out var system))
            return look.Missing($"the size of the expansion vessel was not judged, because its volume or that of the system is not recorded")
                .Advise("Read the vessel's label and estimate the system content.");
        if (look.Lacks(visit.Record.Water?.ColdFillBar, out var fill) | look.Lacks(visit.Record.Water?.ReliefSettingBar, out var setting))
            return look.Missing();

        var flow = Math.Max(
            look.Note(visit.Record.Commissioning?.DesignFlowC) ?? visit.Limits[LimitIds.HighestFlowTemperature].Max!.Value,
            look.Note(visit.Record.Water?.FlowTemperatureC) ?? 0m);
        var final = setting * (100m - visit.Limits[LimitIds.ReliefMargin].Min!.Value) / 100m;
        return fill is >= 0m and <= 10m && final > fill && final <= 20m && flow is > 10m and <= 110m && system is > 0m and <= 100_000m
            ? Judge(vessel, ExpansionVessel.TradeVolumeLitre(ExpansionVessel.ExpansionFromTenC(flow), system, fill, final), flow, look)
            : look.Missing($"a cold fill of {fill} bar, a relief setting of {setting} bar and {system} L of water at {flow} C are outside what the vessel formula covers", "/water/coldFillBar", "/water/reliefSettingBar");
    }

    private static Verdict Judge(decimal vessel, decimal needed, decimal flow, Look look)
    {
        var limit = new Limit
        {
            Min = needed,
            Unit = "L",
            Origin = LimitOrigin.CommonPractice,
            Source = "trade form of the vessel formula: expansion x content / (1 - fill/final), pressures absolute, final = relief setting less the usual margin",
            Verified = false,
        };
        return limit.Allows(vessel)
            ? look.Pass($"the vessel of {vessel} L takes the {needed:0.0} L needed at a flow of {flow} C").Against(limit, vessel)
            : look.Advisory($"the vessel of {vessel} L is too small: {needed:0.0} L are needed at a flow of {flow} C").Against(limit, vessel)
                .Advise("Fit a larger or a second vessel, sized for the whole system.");
    }
}
