using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("installation"), Title("an installation"), Cites("GSIUR-1998", "26(3)")]
public sealed class InstallationRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.IsAnInstallation());
        Then().Do(_ => Owe(visit, Weight.Must, "/jobType", Part.UsedBoiler));
    }
}
