using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("pipework-fitted"), Title("gas pipework was fitted"), Topic(Topics.Tightness), Cites("GSIUR-1998", "22(2)(a)")]
public sealed class PipeworkFittedRule() : CallRule("/partsFitted")
{
    public override IReadOnlyList<Call> Calls { get; } = [Owe.Must(Part.Purge)];

    protected override bool IsCalledBy(Visit visit) => visit.FittedPipework();
}
