using Findings;
using Kernel;
using Rules.Ventilation;
using Visits;

namespace Rules.Water;

[Id(RuleIds.ReliefMargin), Topic(Topics.Water), Cites("BS-EN-12828"), CommonPractice]
[Title("The relief valve is set as usual, and the hot pressure keeps its distance below that")]
[Why("Close below its setting a relief valve begins to weep, and grit on the seat keeps it weeping. A setting above what boiler and radiators are made for is worse, because the weakest part then gives way before the valve.")]
[Serves(Part.SealedSystem)]
[Uses(LimitIds.ReliefMargin, LimitIds.HighestReliefSetting, LimitIds.LowestReliefSetting, LimitIds.DomesticScopeInput)]
[Coverage(Coverage.Full, "two members are compared")]
public sealed class ReliefMarginRule : WaterRule
{
    protected override string SubjectPointer => "/water/reliefSettingBar";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.HotBar, out var hot) | look.Lacks(visit.Record.Water?.ReliefSettingBar, out var setting))
            return look.Missing();
        if (!visit.Limits[LimitIds.LowestReliefSetting].Allows(setting))
            return look.Missing($"a relief valve is not set at {setting} bar", "/water/reliefSettingBar");

        // Larger plant has other valves.
        if (visit.IsOfDomesticSize() != false && visit.Limits[LimitIds.HighestReliefSetting] is var usual && !usual.Allows(setting))
        {
            return look.Advisory($"the relief valve is recorded as set at {setting} bar, above the usual {usual.Max}, which the parts of a domestic system are made for")
                .Against(usual, setting).Warn(Cautions.HotWater).Advise("Read the setting on the valve again; where it is right, make sure that the maker's instructions allow it, or fit a valve that they do.");
        }

        var limit = visit.Limits[LimitIds.ReliefMargin];
        var share = 100m * (setting - hot) / setting;
        return limit.Allows(share)
            ? look.Pass($"{hot} bar is {share:0.#} % below the relief setting of {setting} bar, at least {limit.Min} %").Against(limit, share)
            : look.Advisory($"{hot} bar is {share:0.#} % below the relief setting of {setting} bar, and at least {limit.Min} % keeps the valve shut")
                .Against(limit, share)
                .Warn(Cautions.HotWater).Advise("Check precharge and size of the expansion vessel and the cold fill before the valve lifts.");
    }
}
