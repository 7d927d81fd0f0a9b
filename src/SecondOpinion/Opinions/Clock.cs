using Findings;
using Records;

namespace SecondOpinion.Opinions;

/// <summary>The landlord's year by regulation 36(3) and 36A: what this check is, and by when the next is due.</summary>
internal sealed record Clock(Outcome Outcome, DateOnly NextDeadline)
{
    private static readonly DateOnly WindowSince = new(2018, 4, 6);

    public static Clock Of(Case c)
    {
        var day = c.Day();
        var earlier = c.Record.PreviousVisit;
        if (!IsSound(earlier) || earlier?.DeemedOn > day.AddMonths(2))
            return On(Outcome.Missing, day);

        if ((earlier?.DeemedOn ?? earlier?.FinishedAt?.Date ?? StoredCheck(c)) is not { } counted)
            return On(First(c.Record.Appliance.InstalledOn, day), day);

        var deadline = counted.AddMonths(12);
        if (day > deadline)
            return On(Outcome.Advisory, day);

        var opens = deadline.AddMonths(-2);

        // Careful readers of regulation 36A count the first day and the last one differently: advice.
        return day < opens || c.AsOf < WindowSince ? On(Outcome.Pass, day)
            : day == opens ? On(Outcome.Advisory, day)
            : On(Reply.Pass(day < deadline), deadline);
    }

    private static DateOnly? StoredCheck(Case c) => c.Past().FirstOrDefault(visit => visit.CheckCountedOn is not null)?.CheckCountedOn;

    /// <summary>A check cannot count before it was made, nor more than two months after.</summary>
    public static bool IsSound(PreviousVisit? earlier) =>
        !(earlier?.DeemedOn < earlier?.FinishedAt?.Date) && !(earlier?.DeemedOn > earlier?.FinishedAt?.Date.AddMonths(2));

    // Within twelve months of installation; later it may have been lined up once, or an earlier check is not on record.
    private static Outcome First(DateOnly? installed, DateOnly day) => installed is { } start ? Reply.Pass(start.AddMonths(12) >= day) : Outcome.Missing;

    private static Clock On(Outcome outcome, DateOnly counted) => new(outcome, counted.AddMonths(12));
}
