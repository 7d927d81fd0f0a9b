using Findings;
using Visits.Judging;

namespace Kernel.Tests;

/// <summary>
/// Failures that checkers of other fields are known for, each kept out by a test. Those that belong to one part stand there: a failed
/// rule read as valid (FailClosedTests), silence read as approval (SilenceTests), a rule lost in a release (CatalogueTests), two ways of
/// reading that differ (the reader's tests).
/// </summary>
public sealed class NamedFailureTests
{
    [Fact]
    public void Binary_floating_point_decides_nothing_at_a_limit()
    {
        // 368 ppm at 9.2 % is 0.0040 exactly; in binary it is not.
        Assert.Equal(Outcome.Pass, RatioFinding(368, 9.2m).Outcome);
        Assert.Equal(0m, RatioFinding(368, 9.2m).Margin);
        Assert.Equal(Outcome.Advisory, RatioFinding(368.01m, 9.2m).Outcome);
    }

    [Theory]
    [InlineData(368.01)]
    [InlineData(369)]
    [InlineData(736.01)]
    public void A_rounded_value_never_contradicts_its_verdict(double coPpm)
    {
        var finding = RatioFinding((decimal)coPpm, 9.2m);
        Assert.NotEqual(Outcome.Pass, finding.Outcome);
        var shown = finding.Message!.Split(' ', ',').Where(word => word.StartsWith("0.0", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, shown.Distinct().Count());
    }

    [Fact]
    public void An_answer_names_the_rule_set_that_gave_it()
    {
        var evaluation = Samples.Engine.Evaluate(Samples.Example);
        Assert.Equal((Samples.Catalogue.Info.LawHash, Samples.Catalogue.Info.CodeHash), (evaluation.RuleSet.LawHash, evaluation.RuleSet.CodeHash));
        Assert.Matches("^[0-9a-f]{64}$", evaluation.RuleSet.LawHash);
        Assert.Matches("^[0-9a-f]{64}$", evaluation.RuleSet.CodeHash);
        Assert.Equal(Samples.Catalogue.Header.Version, evaluation.RuleSet.Version);
        Assert.Equal(typeof(ComplianceEngine).Assembly.GetName().Version!.ToString(3), evaluation.EngineVersion);
    }

    [Fact]
    public void No_network_reaches_a_verdict()
    {
        var deciding = new[] { typeof(ComplianceEngine), typeof(IComplianceRule), typeof(Rules.RuleIds), typeof(Calculations.GasFamily) };
        Assert.All(deciding, type => Assert.DoesNotContain(
            type.Assembly.GetReferencedAssemblies(), name => name.Name!.StartsWith("System.Net", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(Include.Passes)]
    [InlineData(Include.Problems)]
    public void A_shortened_answer_still_counts_the_whole(Include include)
    {
        var whole = Samples.Engine.Evaluate(Samples.Example);
        var shown = whole.Show(include);
        Assert.True(shown.Findings.Count < whole.Findings.Count);
        Assert.Equal(whole.Findings.Count, Total(shown.Counts));
        Assert.Equal(whole.ResultHash, shown.ResultHash);
    }

    private static int Total(OutcomeCounts counts) =>
        counts.Pass + counts.Advisory + counts.Unsafe + counts.Missing + counts.NotApplicable + counts.Error;

    private static Finding RatioFinding(decimal coPpm, decimal co2Percent) => Samples.Engine
        .Evaluate(Samples.Changed(json =>
        {
            json["combustion"]!["readings"]![0]!["coPpm"] = coPpm;
            json["combustion"]!["readings"]![0]!["co2Percent"] = co2Percent;
        }))
        .Findings.Single(finding => finding.RuleId == Rules.RuleIds.CombustionRatio && finding.Subject == "/combustion/readings/0");
}
