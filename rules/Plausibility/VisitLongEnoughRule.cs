using Findings;
using Kernel;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.VisitLongEnough), Topic(Topics.Plausibility), CommonPractice]
[Title("The visit is long enough for the work that it records")]
[Why("Nobody strips, cleans, rebuilds and settles a boiler in a few minutes. Where the clock does not fit the work, the cleaning or the reading may not have been done as written.")]
[Serves(Part.WhereRecorded, AtMost = Weight.Should)]
[Coverage(Coverage.MayUnderReport, "only durations that are recorded count")]
public sealed class VisitLongEnoughRule : VisitRule
{
    protected override bool? Applies(Visit visit) => visit.IsAnnualService;

    protected override Verdict Assess(Visit visit, Look look)
    {
        look.Note(visit.Record.FinishedAt);
        if (look.Lacks(visit.Record.StartedAt, out var started) | look.Lacks(visit.Record.HeatExchanger?.MinutesSpent, out var exchanger)
            | look.Lacks(visit.Record.Combustion?.SettledMinutes, out var settled))
            return look.Missing();

        // The boiler is rebuilt before it settles for the reading: these two follow each other.
        var lasted = (decimal)(visit.Record.FinishedAt.Value - started.Value).TotalMinutes;
        return lasted >= exchanger + settled
            ? look.Pass($"the visit lasted {lasted:0} minutes, and heat exchanger and settling take {exchanger + settled} of them")
            : look.Advisory($"the visit lasted {lasted:0} minutes, and {exchanger} minutes at the heat exchanger and {settled} of settling do not fit into it")
                .Advise("Check the times of the visit and of the work.");
    }
}
