using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("check-or-service"), Title("a check, a service or an installation"), Cites("GSIUR-1998", "26(9)")]
public sealed class CheckOrServiceRule() : CallRule("/jobType")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Flue, Part.FlueEffective, Part.Air, Part.Draught, Part.PressureOrRate, Part.SafetyDevices)];

    protected override bool IsCalledBy(Visit visit) => visit.Record.JobType != JobType.Repair && !visit.HadNoAccess && !visit.IsAnInstallationPutOff();
}
