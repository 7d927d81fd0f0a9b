using Findings;
using NRules.Fluent.Dsl;
using RuleModel;

namespace Rules;

[Name(RuleIds.ReliefMargin), Topic(Topics.Water), Cites("BS-EN-12828"), CommonPractice]
[Description("The hot pressure keeps its distance below the setting of the relief valve")]
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

        var limit = visit.Limits[LimitIds.ReliefMargin];
        var share = 100m * (setting - hot) / setting;
        return limit.Allows(share)
            ? look.Pass($"{hot} bar is {share:0.#} % below the relief setting of {setting} bar, at least {limit.Min} %").Against(limit, share)
            : look.Advisory($"{hot} bar is {share:0.#} % below the relief setting of {setting} bar, and at least {limit.Min} % keeps the valve shut")
                .Against(limit, share)
                .Warn(Cautions.HotWater).Advise("Check precharge and size of the expansion vessel and the cold fill before the valve lifts.");
    }
}
