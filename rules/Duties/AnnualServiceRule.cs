using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("annual-service"), Title("an annual service"), CommonPractice]
public sealed class AnnualServiceRule() : CallRule("/jobType")
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Must(Part.FireSide, Part.TrapOfService, Part.Analysis),
        Owe.Should(
            Part.FireSideDetails, Part.Water, Part.Condensate, Part.Electrics, Part.EarthAndPolarity, Part.RoomAirBefore, Part.RoomAirRunning,
            Part.RoomAirAfter, Part.Pressure, Part.Rate, Part.FlueSupports, Part.Terminal, Part.AirInlet, Part.Regulator, Part.Pipework, Part.NextVisit, Part.Alterations),
        Owe.Should(Part.SealedSystem, Part.ReliefValve, Part.FillingLoop).Only("the system is not stated to be open-vented", visit => !visit.IsOpenVented(), "/water/systemType"),
    ];

    protected override bool IsCalledBy(Visit visit) => visit.IsAnnualService && !visit.HadNoAccess;
}
