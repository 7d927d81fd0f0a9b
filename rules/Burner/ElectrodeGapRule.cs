using Findings;
using Kernel;
using Visits;

namespace Rules.Burner;

[Id(RuleIds.ElectrodeGap), Topic(Topics.Burner), CommonPractice]
[Title("The spark gap is as common practice has it")]
[Why("Too wide or too narrow a spark gap makes a weak spark, and gas that lights late lights with a bang. Each hard start strains the burner door and its seal and can end in lock-out.")]
[Serves(Part.FireSideDetails)]
[Uses(LimitIds.ElectrodeGap)]
[Coverage(Coverage.MayOverReport, "the maker's own gap is no member of the record")]
public sealed class ElectrodeGapRule : VisitRule
{
    protected override string SubjectPointer => "/burner";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Burner?.ElectrodeGapMm, out var gap))
            return look.Missing();

        var limit = OfTheMaker(visit) ?? visit.Limits[LimitIds.ElectrodeGap];
        return (limit.Allows(gap)
            ? look.Pass($"the spark gap is {gap} mm, within {limit.Min} to {limit.Max}")
            : look.Advisory($"the spark gap is {gap} mm, outside {limit.Min} to {limit.Max}")
                .Warn(Cautions.MakerDecides).Advise("Set the gap by the maker's instructions, or renew the electrode."))
            .Against(limit, gap);
    }

    // A maker's gap counts with its source alone.
    private static Limit? OfTheMaker(Visit visit) => visit.Maker is { ElectrodeGapMmMin: { } min, ElectrodeGapMmMax: { } max } && min <= max
        && visit.MakersSourceOf(static maker => maker.ElectrodeGapMmMin) is { } source && !string.IsNullOrWhiteSpace(source)
            ? LimitSheet.Maker(min, max, "mm", source)
            : null;
}
