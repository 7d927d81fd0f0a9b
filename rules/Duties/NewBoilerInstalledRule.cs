using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("new-boiler"), Title("a new boiler"), Cites("GSIUR-1998", "33(1)"), Coverage(Coverage.MayOverReport, "an installation that does not say whether the boiler is new calls as well")]
public sealed class NewBoilerInstalledRule() : CallRule("/commissioning/newBoiler")
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Must(Part.Commission, Part.Pressure, Part.Analysis, Part.TrapOfService),
        Owe.Should(Part.CommissionPaper, Part.Rate, Part.Water, Part.Condensate, Part.Electrics, Part.RoomAirBefore, Part.RoomAirRunning, Part.RoomAirAfter),
        Owe.Should(Part.SealedSystem).Only("the system is not stated to be open-vented", visit => !visit.IsOpenVented(), "/water/systemType"),
        Owe.Must(Part.Purge, Part.Pipework).Only("the installation was not broken off", visit => !visit.IsAnInstallationPutOff()),
        Owe.Should(Part.Regulator).Only("the installation was not broken off", visit => !visit.IsAnInstallationPutOff()),
    ];

    protected override bool IsCalledBy(Visit visit) => visit.FittedANewBoiler != false && !visit.HadNoAccess;
}
