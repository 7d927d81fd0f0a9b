using System.Globalization;
using System.Text.RegularExpressions;
using Findings;
using Kernel;
using Visits.Judging;

namespace Rules.Tests;

/// <summary>What the findings of all cases say, read again: every number in a sentence is one that the finding carries.</summary>
public sealed partial class WordingTests
{
    // What has no page of its own is said by no rule.
    private static readonly Lazy<IReadOnlyList<(Finding Finding, Evaluation Evaluation)>> Said = new(() =>
    [
        .. RuleSet.Cases.AsParallel().AsOrdered().Select(pair => RuleSet.Engine.Evaluate(RuleSet.RecordOf(pair.Case), pair.Case.Beside()))
            .SelectMany(evaluation => evaluation.Findings.Where(finding => finding is { Message: not null, RuleId: not "law-of-the-day-known" }).Select(finding => (finding, evaluation)))
            .DistinctBy(pair => (pair.finding.RuleId, pair.finding.Message)),
    ]);

    private static IEnumerable<Finding> Findings => Said.Value.Select(pair => pair.Finding);

    [Fact]
    public void Where_a_limited_number_decided_the_sentence_names_a_number() => DemandNone(Findings
        .Where(finding => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable) && finding.Margin is not null)
        .Where(finding => !Number().IsMatch(finding.Message!)).Select(Quote));

    [Fact]
    public void Every_number_in_a_sentence_is_one_that_the_finding_carries() => DemandNone(Said.Value
        .SelectMany(pair => NumbersIn(pair.Finding.Message!).Where(number => !IsCarried(number, pair.Finding, pair.Evaluation)).Select(number => $"{number} in {Quote(pair.Finding)}")));

    [Fact]
    public void Every_day_in_a_sentence_is_one_that_the_finding_carries() => DemandNone(Said.Value
        .SelectMany(pair => Day().Matches(pair.Finding.Message!).Select(match => match.Value)
            .Where(day => !IsCarriedDay(DateOnly.ParseExact(day, "d MMMM yyyy", CultureInfo.InvariantCulture), pair.Finding, pair.Evaluation)).Select(day => $"{day} in {Quote(pair.Finding)}")));

    [Fact]
    public void Nothing_is_called_safe() => DemandNone(Findings
        .Where(finding => new[] { finding.Title, finding.Message, finding.Remedy, finding.Caution }.OfType<string>().Any(text => CalledSafe().IsMatch(text))).Select(Quote));

    [Fact]
    public void A_remedy_names_work_and_no_number_to_type() => DemandNone(Findings
        .Where(finding => finding.Remedy is { } remedy && Named().Replace(remedy, "").Any(char.IsDigit)).Select(finding => $"{finding.RuleId}: {finding.Remedy}"));

    [Fact]
    public void A_danger_carries_a_caution_and_a_remedy() => DemandNone(Findings
        .Where(finding => finding.Outcome == Outcome.Unsafe && (string.IsNullOrWhiteSpace(finding.Caution) || string.IsNullOrWhiteSpace(finding.Remedy))).Select(Quote));

    [Fact]
    public void A_sentence_begins_small_ends_open_and_is_one() => DemandNone(Findings
        .Where(finding => finding.Message!.EndsWith('.') || finding.Message.Contains(". ", StringComparison.Ordinal)).Select(Quote));

    private static bool IsCarried(string text, Finding finding, Evaluation evaluation)
    {
        var number = Math.Abs(decimal.Parse(text, CultureInfo.InvariantCulture));
        var decimals = text.Contains('.', StringComparison.Ordinal) ? text.Length - text.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        var carried = new CarriedNumbers(finding, evaluation);
        return carried.All.Any(value => decimal.Round(value, decimals, MidpointRounding.AwayFromZero) == number);
    }

    private static bool IsCarriedDay(DateOnly day, Finding finding, Evaluation evaluation) => new CarriedNumbers(finding, evaluation).Days.Contains(day);

    /// <summary>What is wrong with how a sentence names a limit: a place left empty, or a range that does not rise.</summary>
    internal static string? GapIn(Finding finding) => EmptyPlace().IsMatch(finding.Message!) || Range().Matches(finding.Message!).Any(range => Bound(range, "low") >= Bound(range, "high"))
        ? Quote(finding)
        : null;

    private static decimal Bound(Match range, string end) => decimal.Parse(range.Groups[end].Value, CultureInfo.InvariantCulture);

    internal static IEnumerable<string> NumbersIn(string text) => Number().Matches(Named().Replace(Day().Replace(text, ""), "")).Select(match => match.Value);

    private static string Quote(Finding finding) => $"{finding.RuleId} ({finding.Outcome}): {finding.Message}";

    private static void DemandNone(IEnumerable<string> faults)
    {
        var list = string.Join("\n", faults.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        Assert.True(list.Length == 0, list);
    }

    [GeneratedRegex(@"(?<![A-Za-z0-9.-])-?[0-9]+(\.[0-9]+)?(?![0-9A-Za-z(])", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"[0-9]{1,2} (January|February|March|April|May|June|July|August|September|October|November|December) [0-9]{4}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Day();

    // Names that carry a digit.
    [GeneratedRegex(@"\b(BS|EN|IGEM)[ /][A-Z0-9/-]+|\bCO2\b|\bedition [0-9]+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Named();

    // "Make safe" is the trade's word for what the unsafe-situations procedure asks to be done.
    [GeneratedRegex(@"^ |  | $| [,;:)]|\( |to \+ |\b(most|least|above|below|than|within|outside|to|maker's|usual) \(not recorded\)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex EmptyPlace();

    [GeneratedRegex(@"(?<low>-?[0-9]+(\.[0-9]+)?) to \+?(?<high>-?[0-9]+(\.[0-9]+)?)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Range();

    [GeneratedRegex(@"(?<!ma(de|ke|king)( it| the appliance)?[ -])\bsafe\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CalledSafe();
}
