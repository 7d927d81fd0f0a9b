using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("landlords-check"), Title("a landlord's check"), Cites("GSIUR-1998", "36(3)(c)"), Coverage(Coverage.MayOverReport, "premises of which the record does not say how they are held call as well")]
public sealed class LandlordsCheckRule() : CallRule("/premises/use")
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Must(Part.LandlordItems),
        Owe.Should(Part.LandlordPipework, Part.Pipework, Part.LandlordDeadline, Part.NextVisit, Part.Alterations),
    ];

    protected override bool IsCalledBy(Visit visit) => visit.IsALandlordsCheck();
}
