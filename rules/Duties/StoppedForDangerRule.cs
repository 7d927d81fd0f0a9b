using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties;

[Id("stopped-for-danger"), Title("the job was stopped for a danger"), Cites("GSIUR-1998", "26(9)")]
public sealed class StoppedForDangerRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => IsStopped(v));
        Then().Do(_ => Owe(visit, Weight.Must, "/work/result", Part.HandleDanger));
    }

    private static bool IsStopped(Visit visit) => visit.Record.Work?.Result == WorkResult.StoppedForDanger;
}
