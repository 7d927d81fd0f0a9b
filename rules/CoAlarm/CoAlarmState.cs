using Kernel;
using Visits;

namespace Rules.CoAlarm;

/// <summary>What the record shows of the carbon monoxide alarm.</summary>
internal static class CoAlarmState
{
    private const string Standard = "50291";

    /// <summary>Does the alarm bear the mark of the standard for homes, EN 50291-1?</summary>
    public static bool IsOfTheStandard(string marked) => marked.Contains(Standard, StringComparison.Ordinal);

    /// <summary>
    /// Judges that there is an alarm within its life. What today's visit cannot undo does not keep the job open: an alarm that is not
    /// there, or past its day, is an advisory, and <paramref name="duty"/> says what asks for it.
    /// </summary>
    public static Verdict JudgeAlarm(this Look look, Visit visit, string duty)
    {
        if (look.Lacks(visit.Record.CoAlarm?.Present, out var present))
            return look.Missing();

        if (!present)
            return Without(look.Advisory($"there is no carbon monoxide alarm; {duty}"));
        if (look.Lacks(visit.Record.CoAlarm?.ReplaceBy, out var replaceBy))
            return look.Missing();

        var daysSince = visit.Date.DayNumber - replaceBy.DayNumber;
        return daysSince > 0
            ? Without(look.Advisory($"the carbon monoxide alarm was to be replaced by {replaceBy} (days since: {daysSince}) and counts as absent; {duty}"))
            : look.Pass($"there is a carbon monoxide alarm, to be replaced by {replaceBy}");
    }

    private static Verdict Without(Verdict verdict) => verdict.Warn(Cautions.CarbonMonoxide)
        .Advise("Fit a new alarm marked with the standard for homes, test it, and show the user how it sounds.");
}
