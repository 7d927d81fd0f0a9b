using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("pipework-fitted"), Title("gas pipework was fitted"), Cites("GSIUR-1998", "22(2)(a)")]
public sealed class PipeworkFittedRule : CallRule
{
    public override void Define()
    {
        Visit visit = default!;
        When().Match(() => visit, v => v.FittedPipework());
        Then().Do(_ => Owe(visit, Weight.Must, "/partsFitted", Part.Purge));
    }
}
