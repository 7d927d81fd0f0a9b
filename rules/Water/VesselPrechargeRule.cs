using Kernel;
using Visits;

namespace Rules.Water;

/// <summary>A rule on the precharge of the expansion vessel, which can only be read with no pressure on the water side.</summary>
public abstract class VesselPrechargeRule : WaterRule
{
    protected sealed override string SubjectPointer => "/water/vesselPrechargeBar";

    protected sealed override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.VesselPrechargeBar, out var precharge) | look.Lacks(visit.Record.Water?.VesselCheckedAtZeroPressure, out var atZero))
            return look.Missing();

        return atZero
            ? Judge(precharge, visit, look)
            : look.Missing($"the precharge of {precharge} bar was read with pressure on the water side, so it is the water pressure that was read", "/water/vesselCheckedAtZeroPressure")
                .Warn(Cautions.HotWater);
    }

    protected abstract Verdict Judge(decimal precharge, Visit visit, Look look);
}
