using Findings;

namespace WholeRecords.Tests.Properties;

/// <summary>Which of two answers is the better one for somebody who wants to be done.</summary>
internal static class Order
{
    /// <summary>What got better, in words; null where nothing did.</summary>
    public static string? Betters(Answer before, Answer after) =>
        Closing(after) > Closing(before) ? $"held becomes {Closed(after)}"
        : after.Outcome > before.Outcome ? $"{Said(before.Outcome)} becomes {Said(after.Outcome)}"
        : null;

    /// <summary>The same, but that an unsafe record which becomes incomplete and stays held counts for nothing: who takes a value away takes away what it showed, and the record asks for it.</summary>
    public static string? BettersMoreThanAsking(Answer before, Answer after) =>
        !after.MayClose && !before.MayClose && after.Outcome <= OverallOutcome.Incomplete ? null : Betters(before, after);

    /// <summary>What got worse, in words; null where nothing did.</summary>
    public static string? Lowers(Answer before, Answer after) => Betters(after, before) is null ? null
        : Closing(after) < Closing(before) ? $"{Closed(before)} becomes {Closed(after)}" : $"{Said(before.Outcome)} becomes {Said(after.Outcome)}";

    public static string Of(Answer answer) => $"{Said(answer.Outcome)}, {Closed(answer)}";

    private static string Closed(Answer answer) => !answer.MayClose ? "held" : answer.ClosesAs is { } what ? $"closed as {what}" : "closed";

    private static string Said(OverallOutcome outcome) => Wire.WireNames.Of(outcome);

    // Without a word on what it closes as, closed is closed as the job.
    private static int Closing(Answer answer) => !answer.MayClose ? 0 : answer.ClosesAsTheJob == false ? 1 : 2;
}
