namespace SecondOpinion.Duties;

/// <summary>Room air swept before, aired where it is raised, and while the boiler runs.</summary>
internal static class RoomAir
{
    private const DutyKind Kind = DutyKind.RoomAir;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || visit.IsRemoval || visit.IsBesideTheBoiler)
            yield break;
        var air = visit.Record.AmbientCo;
        var isRaised = air?.BeforePpm >= RoomSweep.Raised;
        var why = visit.Record.CoAlarm?.ActivatedSinceLastVisit == true ? "the alarm sounded"
            : isRaised ? "it was raised before"
            : visit.IsExaminationOwed && visit.IsOpenFlued ? "an open flue"
            : visit.IsChamberOpened ? "the case was opened"
            : null;
        if (why is not null)
        {
            yield return visit.Must(Kind, "/ambientCo/beforePpm", visit.Recorded("/ambientCo/beforePpm"), why, Seen.Running);
            yield return visit.Must(Kind, "/ambientCo/runningPeakPpm", visit.Recorded("/ambientCo/runningPeakPpm"), why, Seen.Running);
        }
        else if (visit.IsService)
        {
            yield return visit.Should(Kind, "/ambientCo/beforePpm", visit.Recorded("/ambientCo/beforePpm"), "an annual service", Seen.InTheJob);
            yield return visit.Should(Kind, "/ambientCo/runningPeakPpm", visit.Recorded("/ambientCo/runningPeakPpm"), "an annual service", Seen.Running);
        }

        // A raised background hides a rise: the room is aired first.
        if (isRaised)
            yield return visit.Must(Kind, "/ambientCo/afterAiringPpm", air?.AfterAiringPpm is { } aired ? aired < RoomSweep.Scatter : null, "it was raised before", Seen.Running);
        if (isRaised && air?.BeforePpm <= 30)
            yield return visit.Must(Kind, "/ambientCo/cause", visit.Recorded("/ambientCo/cause") is null ? null : air!.AfterAiringPpm < RoomSweep.Scatter && RoomSweep.IsWithoutRise(air), "it was raised before");
    }
}
