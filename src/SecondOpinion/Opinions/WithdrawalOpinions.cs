using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

/// <summary>
/// A value that was sent and is taken back: the page of duties, section 2, "Withdrawn values". It is taken back with a reason that stays visible,
/// and a danger that an earlier answer told is never left out in silence.
/// </summary>
internal static class WithdrawalOpinions
{
    private const string Withdrawn = "/work/withdrawn";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("danger-taken-back", InferenceOpinions.Called(c => IsAnyLeftOut(c) ? On(Withdrawn, Outcome.Missing) : On("", Outcome.Pass))),
        ("value-taken-back", c => c.Record.Work?.Withdrawn switch
        {
            null => On("", Outcome.NotApplicable),
            var entries => Each(entries, Withdrawn, entry => IsExplained(entry) ? Outcome.Advisory : Outcome.Missing, Outcome.Pass),
        }),
    ];

    private static bool IsExplained(WithdrawnValue entry) => Given(entry.What) && entry.Because is not null;

    private static bool IsAnyLeftOut(Case c) => c.SaidBefore.Any(answer => answer.Dangers.Any(danger =>
        !IsStillShown(c, answer, danger) && !IsSpokenOf(c, danger) && !IsTakenBack(c, danger) && !IsMeasuredLater(c, answer, danger)));

    // Lists may have been written in another order: as many dangers of the rule as were told are the same ones.
    private static bool IsStillShown(Case c, EarlierAnswer answer, PastDanger danger)
    {
        var shown = c.FirstPass.Where(finding => IsDanger(finding) && finding.RuleId == danger.RuleId).ToList();
        return shown.Exists(finding => IsOneInTheOther(finding.Subject, danger.Subject))
            || shown.Count >= answer.Dangers.Count(told => told.RuleId == danger.RuleId);
    }

    /// <summary>What the record shows, or the engineer classed: a defect that was dealt with is advised on and is a danger of the visit all the same.</summary>
    private static bool IsDanger(Finding finding) => finding.Outcome == Outcome.Unsafe
        || (finding.Outcome == Outcome.Advisory && finding.RuleId is ("at-risk-recorded" or "immediately-dangerous-recorded"));

    // With a place of this record it is of this boiler, whatever it is said to concern: duties 9.
    private static bool IsSpokenOf(Case c, PastDanger danger) => PlacedDefect.Of(c).Any(defect =>
        (defect.IsDangerous || defect.Is is { Action: DefectAction.Rectified, ReexaminedAt: not null })
        && (Given(defect.Is.Subject)
            ? IsOneInTheOther(defect.Is.Subject!, danger.Subject)
            : defect.Is.Concerns != DefectConcern.OtherAppliance && defect.Is.Topic is { } topic && topic == danger.Topic));

    private static bool IsTakenBack(Case c, PastDanger danger) =>
        c.Record.Work?.Withdrawn?.Any(entry => IsExplained(entry) && IsOneInTheOther(entry.What!, danger.Subject)) == true;

    /// <summary>
    /// The reading at that place is later than the record that showed the danger, and is a good one by its own values. Whether it counts beside
    /// the rest of the record is for the rules on readings.
    /// </summary>
    private static bool IsMeasuredLater(Case c, EarlierAnswer answer, PastDanger danger) => (c.Record.Combustion?.Readings ?? []).Index().Any(one =>
        Pages.IsWithin(danger.Subject, FormattableString.Invariant($"/combustion/readings/{one.Index}"))
        && one.Item.TakenAt?.Value > answer.FinishedAt
        && !CombustionOpinions.IsAir(one.Item) && CombustionOpinions.BurnsRight(c, one.Item));

    private static bool IsOneInTheOther(string place, string other) => Pages.IsWithin(place, other) || Pages.IsWithin(other, place);
}
