using Findings;
using Kernel;
using Visits;

namespace Rules.Condensate;

[Id(RuleIds.CondensatePipe), Topic(Topics.Condensate), Cites("BS-6798", "6.3.7.1")]
[Title("The condensate pipe is wide enough; outdoors it is wider and insulated")]
[Why("Too small a condensate pipe blocks readily, and outdoors it is the first to freeze. The boiler then shuts down in hard frost, just when the house most needs its heat.")]
[Serves(Part.Condensate)]
[Uses(LimitIds.CondensatePipeInside, LimitIds.CondensatePipeOutside)]
[AppliesBy("/appliance/condensing")]
[Coverage(Coverage.MayOverReport, "the maker may allow another size")]
public sealed class CondensatePipeRule : VisitRule
{
    protected override string SubjectPointer => "/condensate";

    protected override bool? Applies(Visit visit) => visit.Appliance.Condensing;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Condensate?.PipeInternalDiameterMm, out var diameter) | look.Lacks(visit.Record.Condensate?.RunsOutside, out var outside))
            return look.Missing();

        var limit = visit.Limits[outside ? LimitIds.CondensatePipeOutside : LimitIds.CondensatePipeInside];
        if (!limit.Allows(diameter))
            return look.Advisory($"the condensate pipe is {diameter} mm wide inside, less than {limit.Min}")
                .Against(limit, diameter).Warn(Cautions.MakerDecides).Advise("Lay a wider condensate pipe, enlarged before it goes through the wall.");

        return outside && look.Note(visit.Record.Condensate?.Insulated) != true
            ? look.Advisory($"the condensate pipe runs outdoors or in the cold, and no insulation is recorded").Advise("Insulate the pipe, or end it indoors.")
            : look.Pass($"the condensate pipe is {diameter} mm wide inside, at least {limit.Min}").Against(limit, diameter);
    }
}
