using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.ReadingWithinVisit), Topic(Topics.Plausibility), CommonPractice]
[Description("Each flue reading was taken during the visit")]
[Expects("/combustion/readings")]
[Coverage(Coverage.Full, "three times are compared")]
public sealed class ReadingWithinVisitRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.Readings;

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        look.Note(visit.Record.FinishedAt);
        if (look.Lacks(reading.TakenAt, out var taken) | look.Lacks(visit.Record.StartedAt, out var started))
            return look.Missing();

        var finished = visit.Record.FinishedAt;
        if (taken.Value >= started.Value && taken.Value <= finished.Value)
            return look.Pass($"the reading was taken during the visit, at {taken}");

        // The days of one place: a clock may write its moments with another offset.
        DateOnly DayOf(Timestamp moment) => DateOnly.FromDateTime(moment.Value.ToOffset(finished.Value.Offset).DateTime);
        return DayOf(taken) >= DayOf(started) && DayOf(taken) <= visit.Date
            ? look.Advisory($"the reading is timed {taken}, outside the visit from {started} to {finished}")
                .Advise("Check the analyser's clock and the times of the visit.")
            : look.Missing($"the reading is timed {taken}, on another day than the visit, so it does not belong to it", $"{look.Subject}/takenAt")
                .Advise("Record a reading of this visit, or correct the analyser's clock and say so.");
    }
}
