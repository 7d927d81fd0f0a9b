using Calculations;
using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class WaterOpinions
{
    private const decimal BarPerMetre = 0.0980665m;
    private const decimal HighestHeadM = 200;

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("cold-fill-pressure", Of("/water/coldFillBar", (c, water) => Within(c.Limit("cold-fill"), water.ColdFillBar))),
        ("filling-loop-disconnected", Serviced("/water/fillingLoopDisconnected", water => Yes(water.FillingLoopDisconnected))),
        ("filter-cleaned", Since(2019, 6, 1, Serviced("/water/filterCleaned", water => Yes(water.FilterCleaned)))),
        ("flow-return-difference", Of("/water", (c, water) => Within(c.Limit("flow-return-difference"), water.FlowTemperatureC - water.ReturnTemperatureC))),
        ("hot-pressure", Of("/water/hotBar", HotPressure)),
        ("inhibitor-dosed", Since(2019, 6, 1, Of("/water/inhibitorDosedOn", InhibitorDosed))),
        ("inhibitor-tested", Since(2019, 6, 1, Of("/water/inhibitorTested", (_, water) => water.InhibitorTested == true ? Yes(water.InhibitorOk) : Yes(water.InhibitorTested)))),
        ("relief-discharge", Of("/water/reliefDischargeSafe", (_, water) => Yes(water.ReliefDischargeSafe, no: Outcome.Unsafe))),
        ("relief-margin", Of("/water/reliefSettingBar", ReliefMargin)),
        ("relief-valve-state", Of("/water/reliefValve", (_, water) => ReliefValve(water.ReliefValve))),
        ("return-cool-enough-to-condense", c => If(c.Record.Appliance.Condensing, "/water/returnTemperatureC", () => Within(c.Limit("condensing-return"), c.Record.Water?.ReturnTemperatureC))),
        ("vent-and-feed-open", c => If(c.Record.Water is { SystemType: WaterSystemType.OpenVented } or { VentAndFeedOpen: false }, "/water/ventAndFeedOpen", () => Yes(c.Record.Water!.VentAndFeedOpen, no: Outcome.Unsafe))),
        ("vessel-precharge-over-head", Of("/water/vesselPrechargeBar", PrechargeOverHead)),
        ("vessel-precharge-to-fill", Of("/water/vesselPrechargeBar", PrechargeToFill)),
        ("vessel-volume", Of("/water/vesselVolumeL", VesselVolume)),
    ];

    private static Func<Case, IEnumerable<Opinion>> Of(string subject, Func<Case, Water, Outcome> judge) =>
        c => On(subject, judge(c, c.Record.Water ?? new Water()));

    private static Func<Case, IEnumerable<Opinion>> Serviced(string subject, Func<Water, Outcome> judge) =>
        c => If(c.IsServiced(), subject, () => judge(c.Record.Water ?? new Water()));

    private static Outcome HotPressure(Case c, Water water) =>
        water.HotBar is { } hot && !c.Limit("hot-pressure")!.Holds(hot) ? Outcome.Advisory
            : Lacks(water.HotBar, water.ColdFillBar) ? Outcome.Missing
            : Pass(water.HotBar >= water.ColdFillBar);

    private static Outcome InhibitorDosed(Case c, Water water) =>
        water.InhibitorDosedOn is not { } dosed || dosed > c.Day() ? Outcome.Missing : Pass(dosed.AddMonths((int)c.Limit("inhibitor-months")!.Max!) >= c.Day());

    // ISO 4126-1 is for valves that are set at 0.1 bar or more (its scope, from memory): less is no setting. In a home it is 3 bar.
    private static Outcome ReliefMargin(Case c, Water water) =>
        water.ReliefSettingBar is not >= 0.1m || water.HotBar is null ? Outcome.Missing
            : water.ReliefSettingBar > 3 && !(c.NetInputKw() > 70) ? Outcome.Advisory
            : Within(c.Limit("relief-margin"), (water.ReliefSettingBar - water.HotBar) / water.ReliefSettingBar * 100);

    private static Outcome ReliefValve(ReliefValveState? state) => state switch
    {
        null => Outcome.Missing,
        ReliefValveState.Ok => Outcome.Pass,
        ReliefValveState.Passing => Outcome.Advisory,
        _ => Outcome.Unsafe,
    };

    private static Outcome PrechargeOverHead(Case c, Water water) =>
        water.VesselCheckedAtZeroPressure != true || water.StaticHeadM is not <= HighestHeadM || water.VesselPrechargeBar is null
            ? Outcome.Missing
            : Pass(water.VesselPrechargeBar >= water.StaticHeadM * BarPerMetre);

    private static Outcome PrechargeToFill(Case c, Water water) =>
        water.VesselCheckedAtZeroPressure == true ? Within(c.Limit("precharge-over-cold-fill"), water.VesselPrechargeBar - water.ColdFillBar) : Outcome.Missing;

    // V = e C / (1 - p1/p2), absolute; e at the highest flow temperature; p2 is the relief setting less a tenth.
    private static Outcome VesselVolume(Case c, Water water)
    {
        if (Lacks(water.VesselVolumeL, water.SystemVolumeL, water.ReliefSettingBar, water.ColdFillBar))
            return Outcome.Missing;

        var design = c.Record.Commissioning?.DesignFlowC ?? c.Limit("highest-flow-temperature")!.Max!.Value;
        var hottest = Math.Max(design, water.FlowTemperatureC ?? design);
        var (low, high) = (water.ColdFillBar!.Value + 1, water.ReliefSettingBar!.Value * 0.9m + 1);
        if (hottest is <= 10 or > 110 || low is < 1 or > 11 || high is > 21 || low >= high || water.SystemVolumeL is <= 0 or > 100_000)
            return Outcome.Missing;

        var expansion = WaterProperties.DensityKgPerM3(10) / WaterProperties.DensityKgPerM3((double)hottest) - 1;
        return Pass(water.VesselVolumeL >= Math.Round((decimal)expansion, 6) * water.SystemVolumeL / (1 - low / high));
    }
}
