namespace SecondOpinion.Duties;

/// <summary>After an alarm that sounded: the cause, a running sweep without a rise, an analysis.</summary>
internal static class AlarmWithoutFault
{
    private const DutyKind Kind = DutyKind.AlarmWithoutFault;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.Record.CoAlarm?.ActivatedSinceLastVisit != true || visit.IsNothingReached)
            yield break;
        const string Why = "/coAlarm/activatedSinceLastVisit";
        yield return visit.Must(Kind, "/ambientCo/cause", visit.Recorded("/ambientCo/cause"), Why);
        yield return visit.Must(Kind, "/ambientCo/runningPeakPpm", visit.Record.AmbientCo?.RunningPeakPpm is null ? null : RoomSweep.IsWithoutRise(visit.Record.AmbientCo) ? true : visit.MayNotBeFired ? true : false, Why, Seen.Running);
        yield return visit.Must(Kind, "/combustion/readings", Analysis.After(visit).Any() ? true : null, Why, Seen.Running);
    }
}
