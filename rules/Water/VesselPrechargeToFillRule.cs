using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.VesselPrechargeToFill), Topic(Topics.Water), Cites("BS-EN-12828"), CommonPractice]
[Title("The precharge of the expansion vessel is about the cold fill pressure")]
[Why("Where pre-charge and cold fill are far apart, part of the vessel does no work. The system then swings between low-pressure lockouts when cold and a lifting relief valve when hot.")]
[Serves(Part.SealedSystem)]
[Uses(LimitIds.PrechargeOverColdFill)]
[Coverage(Coverage.MayOverReport, "the allowance is a proposal")]
public sealed class VesselPrechargeToFillRule : VesselPrechargeRule
{
    protected override Verdict Judge(decimal precharge, Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.ColdFillBar, out var fill))
            return look.Missing();

        var limit = visit.Limits[LimitIds.PrechargeOverColdFill];
        return limit.Allows(precharge - fill)
            ? look.Pass($"the precharge of {precharge} bar goes with the cold fill of {fill} bar").Against(limit, precharge - fill)
            : look.Advisory($"the precharge of {precharge} bar is {precharge - fill} bar over the cold fill of {fill} bar, and {limit.Min} to {limit.Max} bar is usual")
                .Against(limit, precharge - fill)
                .Advise("Set precharge and cold fill to each other, the precharge with no pressure on the water side.");
    }
}
