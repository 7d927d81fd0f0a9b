using Kernel;
using Records;
using Visits;

namespace Rules.Duties;

[Id("not-running"), Title("the boiler was left off"), CommonPractice]
public sealed class NotRunningRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.IsRunningPutOff);
        Then().Do(_ => PutOff(visit));
    }

    private static void PutOff(Visit visit)
    {
        visit.Owed.PutOff(Part.OfARunningBoiler);
        if (visit.Record.Work?.Result is not (null or WorkResult.CarriedOut))
            visit.Owed.PutOff(Part.OfTheRestOfTheJob);
    }
}
