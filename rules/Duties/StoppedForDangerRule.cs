using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties;

[Id("stopped-for-danger"), Title("the job was stopped for a danger"), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(9)")]
public sealed class StoppedForDangerRule() : CallRule("/work/result")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.HandleDanger)];

    protected override bool IsCalledBy(Visit visit) => visit.Record.Work?.Result == WorkResult.StoppedForDanger;
}
