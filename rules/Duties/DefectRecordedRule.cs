using Findings;
using Kernel;
using Visits;

namespace Rules.Duties;

[Id("defect-recorded"), Title("a defect is recorded"), Cites("GSIUR-1998", "26(9)"), Cites("GSIUR-1998", "34(3)")]
public sealed class DefectRecordedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.RecordedDefects.Count > 0);
        Then().Do(_ => Owe(visit, Weight.Must, "/defects", Part.HandleDanger, Part.MadeKnown));
    }
}
