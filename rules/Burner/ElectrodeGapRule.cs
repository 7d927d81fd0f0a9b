using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Burner;

[Name(RuleIds.ElectrodeGap), Topic(Topics.Burner), CommonPractice]
[Description("The spark gap is as common practice has it")]
[Coverage(Coverage.MayOverReport, "the maker's own gap is no member of the record")]
public sealed class ElectrodeGapRule : VisitRule
{
    protected override string SubjectPointer => "/burner";

    protected override bool? Applies(Visit visit) => visit.IsAnnualService;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Burner?.ElectrodeGapMm, out var gap))
            return look.Missing();

        var limit = visit.Limits[LimitIds.ElectrodeGap];
        return (limit.Allows(gap)
            ? look.Pass($"the spark gap is {gap} mm, within {limit.Min} to {limit.Max}")
            : look.Advisory($"the spark gap is {gap} mm, outside {limit.Min} to {limit.Max}")
                .Warn(Cautions.MakerDecides).Advise("Set the gap by the maker's instructions, or renew the electrode."))
            .Against(limit, gap);
    }
}
