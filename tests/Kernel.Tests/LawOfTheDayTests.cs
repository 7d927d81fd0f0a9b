using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Findings;

namespace Kernel.Tests;

/// <summary>The rules say of which days they know the law, and pass nothing by any other.</summary>
public sealed partial class LawOfTheDayTests
{
    [Theory]
    [InlineData("1900-01-01", OverallOutcome.Incomplete)]
    [InlineData("2018-04-05", OverallOutcome.Incomplete)]
    [InlineData("2018-04-06", OverallOutcome.Pass)]
    [InlineData("2200-12-31", OverallOutcome.Pass)]
    public void By_law_that_the_rules_do_not_know_nothing_passes(string day, OverallOutcome expected)
    {
        var asOf = DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        var evaluation = Samples.Engine.Evaluate(Samples.Changed(_ => { }), asOf: asOf);

        Assert.Equal(expected == OverallOutcome.Incomplete, evaluation.Findings.Any(finding => finding.RuleId == "law-of-the-day-known" && finding.Message!.Contains(asOf.ToString("d MMMM yyyy", CultureInfo.InvariantCulture), StringComparison.Ordinal)));
        Assert.Equal((expected, expected == OverallOutcome.Pass), (evaluation.Outcome, evaluation.Closing.Allowed));
        Assert.Equal(expected, Samples.Engine.Answer(Samples.Changed(_ => { }), asOf: asOf).Outcome);
    }

    [Fact]
    public void A_danger_stays_one_by_whatever_law() =>
        Assert.Equal(OverallOutcome.Unsafe, Samples.Engine.Evaluate(
            Samples.Changed(json => json["combustion"]!["readings"]![0]!["coPpm"] = 2000), asOf: new DateOnly(1900, 1, 1)).Outcome);

    [Fact]
    public void The_day_of_the_visit_counts_as_one_that_is_asked_for()
    {
        // Every date moved by the same years: the record is as sound as it was, and only its law is another.
        var moved = YearOfADate.Replace(Encoding.UTF8.GetString(Samples.Catalogue.ExampleRecord), year => $"\"{int.Parse(year.Groups["year"].Value, CultureInfo.InvariantCulture) - 27}-");
        var evaluation = Samples.Engine.Evaluate(Samples.Read(Encoding.UTF8.GetBytes(moved)));

        Assert.Equal((OverallOutcome.Incomplete, false), (evaluation.Outcome, evaluation.Closing.Allowed));
        Assert.Contains("law-of-the-day-known", evaluation.Closing.BlockedBy);
    }

    /// <summary>By the limits that are the same everywhere it would be judged as if its own law asked for nothing.</summary>
    [Theory]
    [InlineData("GB-NIR")]
    [InlineData("FR")]
    public void By_the_law_of_a_place_that_the_rules_do_not_hold_nothing_is_judged(string place)
    {
        var record = Samples.Changed(json => json["jurisdiction"] = place);
        Assert.Throws<InvalidOperationException>(() => Samples.Engine.Evaluate(record));
        Assert.Throws<InvalidOperationException>(() => Samples.Engine.Answer(record));
    }

    [Fact]
    public void More_than_twelve_months_after_the_review_an_answer_has_a_caution_and_the_same_outcome()
    {
        var last = Samples.Engine.Catalogue.Header.ReviewedOn.AddMonths(12);
        var inTime = Samples.Engine.Evaluate(Samples.Changed(_ => { }), asOf: last);
        var late = Samples.Engine.Evaluate(Samples.Changed(_ => { }), asOf: last.AddDays(1));

        Assert.Equal(Samples.Catalogue.Header.Cautions, inTime.Cautions);
        Assert.Equal(Samples.Catalogue.Header.Cautions.Count + 1, late.Cautions.Count);
        Assert.Equal((OverallOutcome.Pass, OverallOutcome.Pass), (inTime.Outcome, late.Outcome));
    }

    [GeneratedRegex("\"(?<year>20[0-9]{2})-", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex YearOfADate { get; }
}
