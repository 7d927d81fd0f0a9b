using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("installation"), Title("an installation"), Cites("GSIUR-1998", "26(3)")]
public sealed class InstallationRule() : CallRule("/jobType")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.UsedBoiler)];

    protected override bool IsCalledBy(Visit visit) => visit.IsAnInstallation();
}
