using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Water;

[Id(RuleIds.ReliefValveState), Topic(Topics.Water), Cites("BS-6798"), CommonPractice]
[Title("The pressure relief valve is in place and can open")]
[Why("When thermostat or pump fails, the relief valve is what stops water pressure from bursting the boiler. Blocked or missing, it leaves scalding water and steam to find the weakest part; passing, it drains the system.")]
[Serves(Part.ReliefValve)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class ReliefValveStateRule : WaterRule
{
    protected override string SubjectPointer => "/water/reliefValve";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.ReliefValve, out var state))
            return look.Missing();

        return state switch
        {
            ReliefValveState.Ok => look.Pass($"the relief valve is recorded as in order"),
            ReliefValveState.Passing => look.Advisory($"the relief valve lets water by").Warn(Cautions.HotWater)
                .Advise("Renew the valve, and find out whether the vessel made it lift."),
            _ => look.Unsafe($"the relief valve is {state}, so nothing limits the pressure of the water").Warn(Cautions.HotWater)
                .Advise("Do not leave the boiler in use. Fit a relief valve of the maker's setting with a free discharge."),
        };
    }
}
