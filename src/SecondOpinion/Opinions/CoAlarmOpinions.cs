using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class CoAlarmOpinions
{
    private const string Alarm = "/coAlarm";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("co-alarm-england-new-boiler", Since(2022, 10, 1, c => If(And(c.IsIn(Nations.England), c.IsNewBoiler()), Alarm, () => Works(c)))),
        ("co-alarm-england-rented", Since(2022, 10, 1, c => Needed(c, And(c.IsIn(Nations.England), And(c.IsLet(), c.Record.Premises?.RoomIsLivingSpace))))),
        ("co-alarm-place", c => If(c.Record.CoAlarm?.Present, Alarm, () => Within(c.Limit("co-alarm-distance"), c.Record.CoAlarm!.DistanceMm))),
        ("co-alarm-scotland", Since(2022, 2, 1, c => Needed(c, And(c.IsIn(Nations.Scotland), !c.IsWorkplace())))),
        ("co-alarm-sounded", c => Immediately(If(c.Record.CoAlarm is { ActivatedSinceLastVisit: true } ? true : c.Record.CoAlarm?.Present, Alarm, () => Sounded(c, c.Record.CoAlarm!)))),
        ("co-alarm-wales-rented", Since(2022, 12, 1, c => Needed(c, And(c.IsIn(Nations.Wales), c.IsLet())))),
        ("co-alarm-works", c => On(Alarm, Works(c))),
    ];

    // One past its last day is as good as none.
    private static IEnumerable<Opinion> Needed(Case c, bool? isNeeded) => If(isNeeded, Alarm, () => c.Record.CoAlarm switch
    {
        { Present: true, ReplaceBy: var lastDay } => lastDay is null ? Outcome.Missing : Pass(lastDay >= c.Day()),
        var alarm => Yes(alarm?.Present),
    });

    // Behind a shut door nobody can look for what set it off: carbon monoxide counts as an escape.
    private static Outcome Sounded(Case c, CoAlarm alarm) => alarm.ActivatedSinceLastVisit switch
    {
        null => Outcome.Missing,
        false => Outcome.Pass,
        true => Given(alarm.EmergencyReference) ? Outcome.Advisory : WorkOpinions.IsNothingReached(c) ? Outcome.Unsafe : Outcome.Missing,
    };

    private static Outcome Works(Case c) => c.Record.CoAlarm switch
    {
        null or { Present: null } => Outcome.Missing,
        { Present: false } => Outcome.Advisory,
        { ReplaceBy: { } lastDay } when lastDay < c.Day() => Outcome.Advisory,
        { ReplaceBy: null } or { Tested: null } or { Standard: null } => Outcome.Missing,
        var alarm => Pass(alarm.Tested == true && alarm.Standard.Contains("50291", StringComparison.Ordinal)),
    };
}
