using Findings;
using Kernel;
using Visits;

namespace Rules.Duties;

[Id("defect-recorded"), Title("a defect is recorded, or nobody says that there is none"), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(9)"), Cites("GSIUR-1998", "34(3)")]
public sealed class DefectRecordedRule() : CallRule("/defects")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.HandleDanger, Part.MadeKnown)];

    protected override bool IsCalledBy(Visit visit) => visit.Record.Defects is not { Count: 0 };
}
