using Findings;
using Kernel;
using Records;
using Records.Values;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.ReadingWithinVisit), Topic(Topics.Plausibility), CommonPractice]
[Title("Each flue reading was taken during the visit, and one after the work when the work could be over")]
[Why("Flue readings from another day, or from before the strip-down, show the boiler as it was and not as it was left. Only a reading taken once the work is over shows what cleaning, new seals or adjustment did.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Uses(LimitIds.VisitDays)]
[Expects("/combustion/readings")]
[Coverage(Coverage.Full, "times and durations are compared")]
public sealed class ReadingWithinVisitRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.Readings;

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        look.Note(visit.Record.FinishedAt);
        if (look.Lacks(reading.TakenAt, out var taken) | look.Lacks(visit.Record.StartedAt, out var started))
            return look.Missing();

        // The days of one place: a clock may write its moments with another offset.
        var finished = visit.Record.FinishedAt;
        DateOnly DayOf(Timestamp moment) => DateOnly.FromDateTime(moment.Value.ToOffset(finished.Value.Offset).DateTime);
        if (DayOf(taken) < DayOf(started) || DayOf(taken) > visit.Date)
            return DoesNotCount($"the reading is timed {taken}, on another day than the visit, so it does not belong to it");

        var isAfterWork = look.Note(reading.Stage) == WorkStage.AfterWork;
        if (isAfterWork && visit.DaysBeforeItCounts(DayOf(taken)) is { } days)
            return DoesNotCount($"the reading is timed {taken}, {DayLimits.Days(days)} before the visit ended, and does not show how the work left the boiler");

        // Both durations are rough. A reading of before the strip-down alone could be over is none of after it; one that leaves no time
        // to settle may only be badly timed.
        var sinceStart = (decimal)(taken.Value - started.Value).TotalMinutes;
        var work = isAfterWork ? look.Note(visit.Record.HeatExchanger?.MinutesSpent) ?? 0 : 0;
        if (work > 0 && sinceStart < work)
            return DoesNotCount($"the reading is timed {taken} and recorded as one after the work, which took {work} minutes of a visit from {started}");
        if (sinceStart < 0 || taken.Value > finished.Value)
        {
            return look.Advisory($"the reading is timed {taken}, outside the visit from {started} to {finished}")
                .Advise("Check the analyser's clock and the times of the visit.");
        }

        var settled = isAfterWork ? look.Note(visit.Record.Combustion?.SettledMinutes) ?? 0 : 0;
        return sinceStart < work + settled
            ? look.Advisory($"the reading is timed {taken}, and {work} minutes at the heat exchanger and {settled} of settling do not fit between {started} and then")
                .Advise("Check the analyser's clock and the times of the visit and of the work.")
            : look.Pass($"the reading was taken during the visit, at {taken}");

        Verdict DoesNotCount(FormattableString message) => look.Missing(message, $"{look.Subject}/takenAt")
            .Advise("Record a reading of this visit made after the work, or correct the analyser's clock and say so.");
    }
}
