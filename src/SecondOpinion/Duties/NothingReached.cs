namespace SecondOpinion.Duties;

/// <summary>Nobody in, the boiler out of reach, or the work refused: when, where, what was tried, what was left.</summary>
internal static class NothingReached
{
    private const DutyKind Kind = DutyKind.NoAccess;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (!visit.SaysNothingReached)
            yield break;
        const string Why = "/work/result";
        if (visit.HasTraces)
        {
            yield return Visit.Contradiction(Kind, "/work/result", "there are traces of work");
            yield break;
        }

        yield return visit.Must(Kind, "/work/tried", string.IsNullOrWhiteSpace(visit.Record.Work!.Tried) ? null : true, Why);
        yield return visit.Must(Kind, "/work/leftBehind", string.IsNullOrWhiteSpace(visit.Record.Work.LeftBehind) ? null : true, Why);
    }
}
