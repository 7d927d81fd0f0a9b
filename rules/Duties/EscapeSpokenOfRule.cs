using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("escape-spoken-of"), Title("the record speaks of an escape"), Topic(Topics.Tightness), Cites("GSIUR-1998", "37")]
public sealed class EscapeSpokenOfRule() : CallRule("/escape")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Escape)];

    protected override bool IsCalledBy(Visit visit) => visit.SpeaksOfAnEscape();
}
