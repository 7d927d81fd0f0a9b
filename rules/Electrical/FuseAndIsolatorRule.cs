using Findings;
using Kernel;
using Visits;

namespace Rules.Electrical;

[Id(RuleIds.FuseAndIsolator), Topic(Topics.Electrical), CommonPractice]
[Title("The boiler is fused at no more than the usual rating and can be cut off in both poles")]
[Why("An oversized fuse lets a faulty board or cable overheat before it blows. Switching in one pole only can leave part of the boiler live for whoever opens it next.")]
[Serves(Part.Electrics)]
[Uses(LimitIds.FuseRating)]
[Coverage(Coverage.MayOverReport, "the maker may allow another fuse")]
public sealed class FuseAndIsolatorRule : VisitRule
{
    protected override string SubjectPointer => "/electrical";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Electrical?.FuseAmps, out var amps) | look.Lacks(visit.Record.Electrical?.DoublePoleIsolation, out var bothPoles))
            return look.Missing();

        var limit = visit.Limits[LimitIds.FuseRating];
        return (limit.Allows(amps) && bothPoles
            ? look.Pass($"the boiler is fused at {amps} A and can be cut off in both poles")
            : look.Advisory($"the boiler is fused at {amps} A (at most {limit.Max}); cut off in both poles: {bothPoles}")
                .Warn(Cautions.MakerDecides).Advise("Fit the fuse and the isolator that the maker's instructions ask for."))
            .Against(limit, amps);
    }
}
