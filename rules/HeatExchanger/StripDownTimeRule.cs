using Findings;
using Kernel;
using Visits;

namespace Rules.HeatExchanger;

[Id(RuleIds.StripDownTime), Topic(Topics.HeatExchanger), CommonPractice]
[Title("The time spent on the heat exchanger is long enough for opening, cleaning and rebuilding it")]
[Why("Opening a combustion chamber, cleaning it and rebuilding it on good seals takes a certain time. A few minutes on the record suggest a step left out, and a seal left out can leak flue gas.")]
[Serves(Part.FireSideDetails)]
[Uses(LimitIds.StripDownMinutes, LimitIds.StripDownCleaningMinutes)]
[AppliesBy("/heatExchanger/topPlateRemoved")]
[Coverage(Coverage.MayOverReport, "practised hands may be quicker")]
public sealed class StripDownTimeRule : VisitRule
{
    protected override string SubjectPointer => "/heatExchanger";

    protected override bool? Applies(Visit visit) => (visit.IsAnnualService || visit.IsOwedFromBefore(Part.FireSideDetails)) & visit.Record.HeatExchanger?.TopPlateRemoved;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.HeatExchanger?.MinutesSpent, out var minutes) | look.Lacks(visit.Record.HeatExchanger?.Cleaned, out var cleaned))
            return look.Missing();

        var limit = visit.Limits[cleaned ? LimitIds.StripDownCleaningMinutes : LimitIds.StripDownMinutes];
        return (limit.Allows(minutes)
            ? look.Pass($"{minutes} minutes were spent on the heat exchanger, at least {limit.Min}")
            : look.Advisory($"{minutes} minutes were spent on the heat exchanger, fewer than the {limit.Min} that such work takes")
                .Advise("Confirm what was opened, cleaned and put back.")).Against(limit, minutes);
    }
}
