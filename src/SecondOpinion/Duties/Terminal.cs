using Findings;
using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Terminals that were there before anybody measured: a little short, they are judged by what comes through the opening.</summary>
internal static class Terminal
{
    /// <summary>Short by up to a quarter. The share is ours, common practice.</summary>
    private const decimal LeastShare = 0.75m;

    /// <summary>Flue and boiler unchanged, the opening no newer, the age stated, and short by a quarter at most.</summary>
    public static bool IsJudgedByEffect(Visit visit, string clearance)
    {
        var isUnchanged = !visit.IsNew && visit.Record.Work?.Kind != WorkKind.FlueRelocation && !visit.Touched.Has(TouchedPart.Flue)
            && visit.Record is { Appliance.InstalledOn: not null, Flue.OpeningOlderThanFlue: true };
        return isUnchanged && Short(visit, clearance, LeastShare) && visit.Record.AmbientCo?.RoomBehindOpeningPpm is null or < RoomSweep.Raised && !HasRise(visit);
    }

    /// <summary>What the rule by effect asks for.</summary>
    public static IEnumerable<Owed> Asks(Visit visit)
    {
        if (visit.IsNothingReached)
            yield break;
        foreach (var clearance in JudgedByEffect(visit))
            yield return visit.Must(DutyKind.ExamineAfterWork, "/ambientCo/roomBehindOpeningPpm", visit.Recorded("/ambientCo/roomBehindOpeningPpm"), clearance, Seen.Running);
    }

    /// <summary>Clearances that are short and judged by effect: never better than advisory.</summary>
    public static IEnumerable<string> JudgedByEffect(Visit visit) => ShortByTable(visit)
        .Where(opinion => IsJudgedByEffect(visit, opinion.Subject)).Select(opinion => opinion.Subject);

    /// <summary>Too near to an opening by the table of clearances.</summary>
    public static IEnumerable<Opinion> ShortByTable(Visit visit) => visit.One.IsOpenFlued() != false ? [] : (visit.Record.Flue?.TerminalClearances ?? []).Index()
        .Select(one => FlueOpinions.ByTable(visit.One, one.Item, $"/flue/terminalClearances/{one.Index}")).Where(opinion => opinion.Outcome == Outcome.Unsafe);

    private static bool HasRise(Visit visit) => visit.Record.AmbientCo is { RoomBehindOpeningPpm: { } behind } air && behind - (RoomSweep.Before(air) ?? 0) > RoomSweep.Scatter;

    /// <summary>Would it be far enough were the distance a third longer? The table is the clearances' own.</summary>
    private static bool Short(Visit visit, string clearance, decimal share) =>
        visit.Record.Flue!.TerminalClearances![int.Parse(clearance.Split('/')[^1], System.Globalization.CultureInfo.InvariantCulture)] is { To: { } to, DistanceMm: { } distance }
        && to != ClearanceTo.CarportOpening && FlueOpinions.Needed(visit.One, to) is { } needed && distance >= share * needed;
}
