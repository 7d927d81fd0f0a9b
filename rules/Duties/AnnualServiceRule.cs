using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("annual-service"), Title("an annual service"), CommonPractice]
public sealed class AnnualServiceRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.IsAnnualService && !v.HadNoAccess);
        Then().Do(_ => OweAll(visit));
    }

    private void OweAll(Visit visit)
    {
        Owe(visit, Weight.Must, "/jobType", Part.FireSide, Part.TrapOfService, Part.Analysis);
        Owe(visit, Weight.Should, "/jobType",
            Part.FireSideDetails, Part.Water, Part.Condensate, Part.Electrics, Part.EarthAndPolarity, Part.RoomAirBefore, Part.RoomAirRunning,
            Part.RoomAirAfter, Part.Pressure, Part.Rate, Part.FlueSupports, Part.Terminal, Part.AirInlet, Part.Regulator, Part.Pipework, Part.NextVisit, Part.Alterations);
        if (!visit.IsOpenVented())
            Owe(visit, Weight.Should, "/water/systemType", Part.SealedSystem, Part.ReliefValve, Part.FillingLoop);
    }
}
