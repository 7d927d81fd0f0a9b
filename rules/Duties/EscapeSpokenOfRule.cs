using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("escape-spoken-of"), Title("the record speaks of an escape"), Cites("GSIUR-1998", "37")]
public sealed class EscapeSpokenOfRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.SpeaksOfAnEscape());
        Then().Do(_ => Owe(visit, Weight.Must, "/escape", Part.Escape));
    }
}
