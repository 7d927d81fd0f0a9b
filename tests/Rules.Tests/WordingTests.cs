using System.Globalization;
using System.Text.RegularExpressions;
using Findings;
using RuleModel;

namespace Rules.Tests;

/// <summary>What the findings of all cases say, read again: every number in a sentence is one that the finding carries.</summary>
public sealed partial class WordingTests
{
    private static readonly Lazy<IReadOnlyList<(Finding Finding, Evaluation Evaluation)>> Said = new(() =>
    [
        .. RuleSet.Cases.AsParallel().AsOrdered().Select(pair => RuleSet.Engine.Evaluate(RuleSet.RecordOf(pair.Case)))
            .SelectMany(evaluation => evaluation.Findings.Where(finding => finding.Message is not null).Select(finding => (finding, evaluation)))
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
        .Where(finding => finding.Remedy is { } remedy && remedy.Any(char.IsDigit)).Select(finding => $"{finding.RuleId}: {finding.Remedy}"));

    [Fact]
    public void A_danger_carries_a_caution_and_a_remedy() => DemandNone(Findings
        .Where(finding => finding.Outcome == Outcome.Unsafe && (string.IsNullOrWhiteSpace(finding.Caution) || string.IsNullOrWhiteSpace(finding.Remedy))).Select(Quote));

    [Fact]
    public void A_sentence_begins_small_ends_open_and_is_one() => DemandNone(Findings
        .Where(finding => finding.Message!.EndsWith('.') || finding.Message.Contains(". ", StringComparison.Ordinal)).Select(Quote));

    private static bool IsCarried(string text, Finding finding, Evaluation evaluation)
    {
        var number = decimal.Parse(text, NumberStyles.Number | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var decimals = text.Contains('.', StringComparison.Ordinal) ? text.Length - text.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        return Carried(finding, evaluation).Any(carried => decimal.Round(Math.Abs(carried), decimals, MidpointRounding.AwayFromZero) == Math.Abs(number));
    }

    private static IEnumerable<decimal> Carried(Finding finding, Evaluation evaluation)
    {
        var texts = (finding.Evidence ?? []).Select(evidence => evidence.Value).Concat((finding.References ?? []).Select(reference => reference.Clause)).Append(finding.Title);
        var limit = finding.Limit;
        var limited = finding.Margin is { } margin ? new[] { limit?.Max - margin, limit?.Min + margin, margin } : [];
        return texts.OfType<string>().SelectMany(NumbersIn).Select(text => decimal.Parse(text, NumberStyles.Number, CultureInfo.InvariantCulture))
            .Concat((finding.Evidence ?? []).Select(evidence => evidence.Number).Concat(limited).Append(limit?.Min).Append(limit?.Max).OfType<decimal>())
            .Concat(evaluation.Figures.Select(figure => figure.Value).OfType<decimal>());
    }

    private static bool IsCarriedDay(DateOnly day, Finding finding, Evaluation evaluation) =>
        day == evaluation.AsOf || day == evaluation.LookedAtOn || evaluation.Due.Any(due => due.By == day)
        || (finding.Evidence ?? []).Any(evidence => evidence.Value?.StartsWith(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), StringComparison.Ordinal) == true);

    private static IEnumerable<string> NumbersIn(string text) => Number().Matches(Day().Replace(text, "")).Select(match => match.Value);

    private static string Quote(Finding finding) => $"{finding.RuleId} ({finding.Outcome}): {finding.Message}";

    private static void DemandNone(IEnumerable<string> faults) => Assert.Equal("", string.Join("\n", faults.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)));

    [GeneratedRegex(@"(?<![A-Za-z0-9.-])-?[0-9]+(\.[0-9]+)?(?![0-9A-Za-z(])", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"[0-9]{1,2} (January|February|March|April|May|June|July|August|September|October|November|December) [0-9]{4}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Day();

    // "Make safe" is the trade's word for what the unsafe-situations procedure asks to be done.
    [GeneratedRegex(@"(?<!made |make |making )\bsafe\b", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex CalledSafe();
}
