using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.LandlordPipework), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(2)"), CommonPractice]
[Title("At a landlord's check the pipework is looked at and tested for tightness: recommended, not part of the statutory check")]
[Why("By law the yearly check is of appliances and flues, yet the landlord must keep the gas pipework maintained as well. A leak or a corroded run is best found while an engineer is on site anyway.")]
[Serves(Part.LandlordPipework)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class LandlordPipeworkRule : VisitRule
{
    protected override string SubjectPointer => "/pipework";

    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var isSeen = look.Note(visit.Record.Pipework?.VisualOk) is not null;
        var isTested = visit.Record.TightnessTests is { Count: > 0 };
        return isSeen && isTested
            ? look.Pass($"the landlord's pipework was looked at and tested for tightness")
            : look.Advisory($"the landlord must maintain the pipework, and the record shows {(isSeen ? "no tightness test" : isTested ? "no visual check" : "neither a visual check nor a tightness test")} of it")
                .Advise("Look at the pipework and test it for tightness at the landlord's check, or agree with the landlord who does.");
    }
}
