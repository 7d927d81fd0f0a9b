using Kernel;
using Records;
using Visits;

namespace Rules.Duties;

[Id("not-running"), Title("the boiler was left off"), CommonPractice]
public sealed class NotRunningRule() : CallRule(null)
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Later(Part.OfARunningBoiler),
        Owe.Later(Part.OfTheRestOfTheJob).Only("the job was broken off", visit => visit.Record.Work?.Result is not (null or WorkResult.CarriedOut)),
    ];

    protected override bool IsCalledBy(Visit visit) => visit.IsRunningPutOff;
}
