using Kernel;
using Visits;

namespace Rules.Duties;

[Id("any-visit"), Title("any visit")]
public sealed class AnyVisitRule() : CallRule(null)
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Must(Part.Left, Part.Competence),
        Owe.Should(Part.Plate, Part.Paper, Part.AlarmOwed),
    ];

    protected override bool IsCalledBy(Visit visit) => !visit.HadNoAccess;
}
