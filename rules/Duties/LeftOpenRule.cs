using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("left-open"), Title("a gasway ends open"), Topic(Topics.Joints), Cites("GSIUR-1998", "6(2)"), Cites("GSIUR-1998", "6(3)"), Coverage(Coverage.MayOverReport, "where the record does not say how the boiler was left, it calls as well")]
public sealed class LeftOpenRule() : CallRule("/appliance/stateOnLeaving")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Seal)];

    protected override bool IsCalledBy(Visit visit) => visit.LeavesAGaswayOpen() != false;
}
