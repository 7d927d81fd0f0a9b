using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class IntervalOpinions
{
    private const string Previous = "/previousVisit";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("landlord-deadline", c => If(c.IsLandlords(), Previous, () => Clock.Of(c).Outcome)),
        ("next-due-recorded", c => If(c.Record.JobType is JobType.AnnualService or JobType.LandlordCheck, "/paperwork/nextDueOn", () => NextDue(c))),
        ("service-interval", c => If(c.IsAnnualService(), Previous, () => Since(c, Math.Min(MakersMonths(c), DefaultMonths(c)), "annualService", "commissioning"))),
        ("workplace-interval", c => If(c.IsWorkplace(), Previous, () => Since(c, DefaultMonths(c), "annualService", "commissioning", "landlordCheck"))),
    ];

    private static Outcome NextDue(Case c)
    {
        var months = c.IsAnnualService() ? MakersMonths(c) : DefaultMonths(c);
        var latest = c.Day().AddMonths(months);
        if (c.IsLandlords() == true)
            latest = Clock.Of(c) is { Outcome: not Outcome.Missing } clock ? clock.NextDeadline : c.Day().AddMonths(Math.Min(months, DefaultMonths(c)));

        // However long the maker allows: beyond the usual year it is said.
        if (c.IsLandlords() != true && latest > c.Day().AddMonths(DefaultMonths(c)))
            latest = c.Day().AddMonths(DefaultMonths(c));

        return c.Record.Paperwork?.NextDueOn is { } due ? Pass(due > c.Day() && due <= latest) : Outcome.Missing;
    }

    private static int DefaultMonths(Case c) => (int)c.Limit("service-interval-months")!.Max!;

    // A longer interval counts only with its source.
    private static int MakersMonths(Case c) => c.Record.MakerLimits switch
    {
        { ServiceIntervalMonths: { } months } maker when months <= DefaultMonths(c) || Given(maker.Source) => (int)months,
        _ => DefaultMonths(c),
    };

    private static Outcome Since(Case c, int months, params string[] kinds)
    {
        var earlier = c.Record.PreviousVisit;
        if (!Clock.IsSound(earlier))
            return Outcome.Missing;

        var last = earlier?.FinishedAt?.Date ?? earlier?.DeemedOn ?? Stored(c, kinds) ?? c.Record.Appliance.InstalledOn;
        return last is { } day && day <= c.Day().AddMonths(2) ? Pass(day.AddMonths(months) >= c.Day()) : Outcome.Missing;
    }

    // Only where the record says nothing of its previous visit.
    private static DateOnly? Stored(Case c, string[] kinds) => c.Past().FirstOrDefault(visit => kinds.Contains(visit.JobType))?.Date;
}
