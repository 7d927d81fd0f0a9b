using System.Globalization;
using Findings;
using Records;
using Wire;
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

    // Lists may have been written in another order: as many dangers of the rule in the same list as were told are the same ones. What only a class
    // told is its own matter: a defect of another topic does not stand for it.
    private static bool IsStillShown(Case c, EarlierAnswer answer, PastDanger danger)
    {
        var shown = c.FirstPass.Where(finding => IsDanger(finding) && finding.RuleId == danger.RuleId && !IsElsewhere(c, finding)).ToList();
        return shown.Exists(finding => IsOneInTheOther(finding.Subject, danger.Subject) || (DefectAt(c, finding)?.Subject is { Length: > 0 } place && IsOneInTheOther(place, danger.Subject)))
            || (ListOf(danger.Subject) is { } list && shown.Count(finding => ListOf(finding.Subject) == list && IsOfTopic(c, finding, danger)) is var stands and > 0
                && stands >= answer.Dangers.Count(told => told.RuleId == danger.RuleId && told.Topic == danger.Topic && ListOf(told.Subject) == list));
    }

    // What was told of this boiler is not shown by a defect that is now said to be of something else: duties 9.
    private static bool IsElsewhere(Case c, Finding finding) => DefectAt(c, finding) is { Concerns: not (null or DefectConcern.ThisAppliance), Subject: null or "" };

    private static Defect? DefectAt(Case c, Finding finding) => ListOf(finding.Subject) == "/defects" ? c.Record.Defects![int.Parse(finding.Subject["/defects/".Length..], CultureInfo.InvariantCulture)] : null;

    private static bool IsOfTopic(Case c, Finding finding, PastDanger danger) => DefectAt(c, finding) is not { } defect || (defect.Topic ?? finding.Topic) == danger.Topic;

    private static string? ListOf(string place) =>
        place.LastIndexOf('/') is var end and >= 0 && place[(end + 1)..] is { Length: > 0 } last && last.All(char.IsAsciiDigit) ? place[..end] : null;

    /// <summary>What the record shows, or the engineer classed: a defect that was dealt with is advised on and is a danger of the visit all the same.</summary>
    private static bool IsDanger(Finding finding) => finding.Outcome == Outcome.Unsafe
        || (finding.Outcome == Outcome.Advisory && finding.RuleId is ("at-risk-recorded" or "immediately-dangerous-recorded"));

    // With a place of this record it is of this boiler, whatever it is said to concern: duties 9.
    private static bool IsSpokenOf(Case c, PastDanger danger) => PlacedDefect.Of(c).Any(defect =>
        (defect.IsDangerous || defect.Is is { Action: DefectAction.Rectified, ReexaminedAt: not null })
        && (Given(defect.Is.Subject)
            ? IsOneInTheOther(defect.Is.Subject!, danger.Subject)
            : defect.Is.Concerns != DefectConcern.OtherAppliance && defect.Is.Topic is { } topic && topic == danger.Topic));

    // A value is taken back, never the section or list that holds it; of a class that was given to a whole section, that section.
    private static bool IsTakenBack(Case c, PastDanger danger) => c.Record.Work?.Withdrawn?.Any(entry => IsExplained(entry)
        && (entry.What == danger.Subject || (IsOfValues(danger) && danger.Subject.Length > 0 && Pages.IsWithin(entry.What!, danger.Subject)))) == true;

    private static bool IsOfValues(PastDanger danger) => danger.RuleId is not ("at-risk-recorded" or "immediately-dangerous-recorded") || ListOf(danger.Subject) == "/defects";

    /// <summary>Measured again: after the work, at the same rate, later than the record that showed the danger, and good (duties 4).</summary>
    private static bool IsMeasuredLater(Case c, EarlierAnswer answer, PastDanger danger) => (c.Record.Combustion?.Readings ?? []).Any(reading =>
        reading is { Stage: WorkStage.AfterWork, Rate: not null } && WireNames.Of(reading.Rate) == danger.Rate && reading.TakenAt?.Value > answer.FinishedAt
        && !CombustionOpinions.IsAir(reading) && !(reading.Rate == FiringRate.Maximum && reading.LoadPercent < 50) && CombustionOpinions.BurnsRight(c, reading));

    private static bool IsOneInTheOther(string place, string other) => Pages.IsWithin(place, other) || Pages.IsWithin(other, place);
}
