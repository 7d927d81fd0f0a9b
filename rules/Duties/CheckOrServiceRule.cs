using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("check-or-service"), Title("a check, a service or an installation"), Cites("GSIUR-1998", "26(9)")]
public sealed class CheckOrServiceRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.Record.JobType != JobType.Repair && !v.HadNoAccess && !v.IsAnInstallationPutOff());
        Then().Do(_ => Owe(visit, Weight.Must, "/jobType", Part.Flue, Part.FlueEffective, Part.Air, Part.Draught, Part.PressureOrRate, Part.SafetyDevices));
    }
}
