using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.CoAlarm;

[Id(RuleIds.CoAlarmCause), Topic(Topics.CoAlarm), Cites("BS-7967"), CommonPractice]
[Title("After a carbon monoxide alarm has sounded its cause is recorded, and the room air does not rise while the boiler runs")]
[Why("An alarm that sounded and for which nobody looks for the cause will be taken for a faulty one, and the next time for noise. A rise that would be small elsewhere is here the likely reason why it went off.")]
[Serves(Part.AlarmSounded)]
[Uses(LimitIds.AmbientCoRise)]
[Coverage(Coverage.MayUnderReport, "whether the cause that is given is the true one no record shows")]
public sealed class CoAlarmCauseRule : VisitRule
{
    protected override string SubjectPointer => "/ambientCo";

    protected override bool? Applies(Visit visit) => visit.AlarmHadSounded() && !visit.HadNoAccess;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var peak = look.Note(visit.Record.AmbientCo?.RunningPeakPpm);
        var before = look.Note(visit.Record.AmbientCo?.AfterAiringPpm) ?? look.Note(visit.Record.AmbientCo?.BeforePpm);
        var unexplained = look.Lacks(visit.Record.AmbientCo?.Cause, out _);
        var rise = visit.Limits[LimitIds.AmbientCoRise];
        if (peak - before is { } risen && !rise.Allows(risen))
            return Rose(visit, look, unexplained, $"a carbon monoxide alarm had sounded, and with the boiler running the room air rose from {before} to {peak} ppm").Against(rise, risen);

        if (unexplained)
            return look.Missing($"a carbon monoxide alarm had sounded, and what set it off is not recorded").Warn(Cautions.RoomAir).Advise("Look for the cause at every appliance of the home and at the alarm itself, and record what was found.");

        var found = look.Pass($"a carbon monoxide alarm had sounded, and what set it off is recorded");
        return peak is not null && before is not null ? found.Against(rise, peak - before) : found;
    }

    // Whoever leaves the boiler in use leaves the rise with it; and a rise is not its own cause, however the boiler is left.
    private static Verdict Rose(Visit visit, Look look, bool unexplained, FormattableString message)
    {
        var asked = visit.IsLeftOutOfUse ? [] : visit.AskedUnlessADefect("/ambientCo/runningPeakPpm", "/ambientCo", Topics.AmbientAir);
        return (asked.Count > 0 || unexplained ? look.Missing(message, asked) : look.Advisory(message)).Warn(Cautions.RoomAir)
            .Advise("Find where the carbon monoxide comes from, record what it was and put it right, and sweep the room again with the boiler running; or record it as a defect.");
    }
}
