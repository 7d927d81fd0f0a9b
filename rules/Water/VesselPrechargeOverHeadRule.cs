using Calculations;
using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.VesselPrechargeOverHead), Topic(Topics.Water), Cites("BS-EN-12828"), CommonPractice]
[Title("The precharge of the expansion vessel is at least the static head above it")]
[Why("Pre-charged below the static head, a vessel is filled by the weight of water above it before the system is even warm. Nothing is left for the expansion, so the pressure climbs and the relief valve lifts.")]
[Serves(Part.SealedSystem)]
[Coverage(Coverage.Full, "two members are compared")]
public sealed class VesselPrechargeOverHeadRule : VesselPrechargeRule
{
    protected override Verdict Judge(decimal precharge, Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.StaticHeadM, out var height))
            return look.Missing();
        if (height > HighestSystemM)
            return look.Missing($"a static head of {height} m is outside what the formula covers", "/water/staticHeadM");

        var limit = new Limit
        {
            Min = ExpansionVessel.StaticHeadBar(height),
            Unit = "bar",
            Origin = LimitOrigin.CommonPractice,
            Source = "weight of the water above the vessel, 1000 kg/m3 x 9.80665 m/s2 x height",
            Verified = false,
        };
        return limit.Allows(precharge)
            ? look.Pass($"the precharge of {precharge} bar carries the static head of {limit.Min:0.00} bar").Against(limit, precharge)
            : look.Advisory($"the precharge of {precharge} bar is below the static head of {limit.Min:0.00} bar, so the vessel is full before the system warms up")
                .Against(limit, precharge)
                .Warn(Cautions.HotWater).Advise("Recharge the vessel with no pressure on the water side; if it does not hold, find out why.");
    }

    // Range of the formula.
    private const decimal HighestSystemM = 200m;
}
