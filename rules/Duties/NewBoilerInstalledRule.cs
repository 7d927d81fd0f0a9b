using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("new-boiler"), Title("a new boiler"), Cites("GSIUR-1998", "33(1)")]
public sealed class NewBoilerInstalledRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.IsNewBoiler != false && !v.HadNoAccess && !v.IsAnInstallationPutOff());
        Then().Do(_ => OweAll(visit));
    }

    private void OweAll(Visit visit)
    {
        Owe(visit, Weight.Must, "/commissioning/newBoiler", Part.Commission, Part.Purge, Part.Pressure, Part.Analysis, Part.Pipework, Part.TrapOfService);
        Owe(visit, Weight.Should, "/commissioning/newBoiler",
            Part.CommissionPaper, Part.Rate, Part.Water, Part.Condensate, Part.Electrics, Part.RoomAirBefore, Part.RoomAirRunning, Part.RoomAirAfter, Part.Regulator);
        if (!visit.IsOpenVented())
            Owe(visit, Weight.Should, "/water/systemType", Part.SealedSystem);
    }
}
