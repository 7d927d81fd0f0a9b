using Findings;
using Visits.Computations;
using static Rules.Tests.FigureRecords;

namespace Rules.Tests;

/// <summary>Uncertainties against a Monte Carlo (JCGM 101), and what they do to a verdict (JCGM 106).</summary>
public sealed class FigureUncertaintyTests
{
    private const string Accuracies = "/instruments/0/accuracies";
    private const string Reading = "/combustion/readings/0";

    /// <summary>A reading with limits of error: rectangular, and the step of the display rectangular besides.</summary>
    private static decimal Draw(Random random, double value, double limit, double step) =>
        (decimal)(value + limit * (2 * random.NextDouble() - 1) + step * (random.NextDouble() - 0.5));

    [Theory]
    [InlineData("coCo2Ratio")]
    [InlineData("coAirFree")]
    [InlineData("excessAir")]
    [InlineData("flueDewPoint")]
    [InlineData("efficiencyNet")]
    public void Propagation_agrees_with_a_Monte_Carlo(string name)
    {
        var computation = ComputationTable.Find(name)!;
        var random = new Random(20260914);
        var draws = Enumerable.Range(0, 20_000).Select(_ =>
        {
            var drawn = new Dictionary<string, object>(StringComparer.Ordinal)
            {
                ["fuel"] = Calculations.GasFamily.NaturalGas,
                ["coPpm"] = Draw(random, 96, 10, 1), // 5 % of 96 is less than 10
                ["co2Percent"] = Draw(random, 9.2, 0.3, 0.1),
                ["o2Percent"] = Draw(random, 4.5, 0.2, 0.1),
                ["flueTemperatureC"] = Draw(random, 60, 2, 1),
                ["airTemperatureC"] = Draw(random, 18, 1, 1),
            };
            if (name is not "coCo2Ratio")
                drawn.Remove("co2Percent");
            return (double)computation.NumberOf(computation.Complete(drawn))!.Value;
        }).ToList();
        var mean = draws.Average();
        var spread = Math.Sqrt(draws.Sum(x => (x - mean) * (x - mean)) / (draws.Count - 1));

        var stated = (double)FiguresOf(Example((Accuracies, AnalyserAccuracies))).Only(name, Reading).Uncertainty!.Value;

        Assert.Equal(1, stated / spread, 0.02);
    }

    [Fact]
    public void Nothing_stated_is_nothing_claimed()
    {
        Assert.All(FiguresOf(Example()), figure => Assert.Null(figure.Uncertainty));

        // CO2's accuracy is missing: the ratio would look surer than it is.
        var half = FiguresOf(Example((Accuracies, """[{"quantity":"coPpm","absolute":10}]""")));
        Assert.Null(half.Only("coCo2Ratio", Reading).Uncertainty);

        // The reading names its instrument; another one's accuracy is not this one's.
        var other = FiguresOf(Example((Accuracies, AnalyserAccuracies), (Reading + "/instrument", "\"FA-2\"")));
        Assert.Null(other.Only("coCo2Ratio", Reading).Uncertainty);
    }

    [Fact]
    public void At_no_CO_the_ratio_keeps_the_uncertainty_of_CO()
    {
        var figures = FiguresOf(Example((Accuracies, AnalyserAccuracies), (Reading + "/coPpm", "0")));

        // sqrt(10^2 / 3 + 1 / 12) / 92000
        Assert.Equal(Math.Sqrt(100 / 3.0 + 1 / 12.0) / 92_000, (double)figures.Only("coCo2Ratio", Reading).Uncertainty!.Value, 2e-8);
    }

    [Fact]
    public void On_the_limit_a_pass_is_a_toss_up_and_becomes_an_advisory()
    {
        var finding = FlueCo("350");

        Assert.Equal(0.5m, finding.Conformity);
        Assert.Equal(0m, finding.Margin);
        Assert.Equal(Outcome.Advisory, finding.Outcome);
        Assert.Contains("probability of 0.50", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    // u = sqrt((5 % of CO)^2 / 3 + 1 / 12); z = (350 - CO) / u; Phi(1.645) = 0.95 (normal table).
    [InlineData("96", Outcome.Pass, 1.0)]
    [InlineData("334", Outcome.Pass, 0.9513)] // u 9.646, z 1.6587
    [InlineData("335", Outcome.Advisory, 0.9393)] // u 9.675, z 1.5504
    [InlineData("360", Outcome.Advisory, 0.1681)] // u 10.396, z -0.9619: over the limit itself
    public void Inside_the_guard_band_a_pass_becomes_an_advisory(string co, Outcome outcome, double conformity)
    {
        var finding = FlueCo(co);

        Assert.Equal(conformity, (double)finding.Conformity!.Value, 2e-4);
        Assert.Equal(outcome, finding.Outcome);
    }

    [Fact]
    public void A_good_record_with_good_instruments_stays_a_pass()
    {
        var evaluation = RuleSet.Engine.Evaluate(Example((Accuracies, AnalyserAccuracies.Replace("0.3", "0.1", StringComparison.Ordinal)), ("/instruments/1/accuracies",
            """[{"quantity":"dropMbar","absolute":0.05,"resolution":0.01},{"quantity":"applianceInletMbar","absolute":0.2},{"quantity":"meterOperatingMbar","relativePercent":0.5}]""")));

        Assert.Empty(evaluation.Findings.Where(finding => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable)).Select(finding => finding.Message));
        string[] sure = [RuleIds.CombustionRatio, RuleIds.FlueCo, RuleIds.FlueCo2, RuleIds.TightnessResult, RuleIds.InletPressure, RuleIds.MeterOperatingPressure];
        Assert.All(sure, rule => Assert.Contains(RuleSet.AnswersOf(rule, evaluation), finding => finding.Conformity >= 0.95m));
    }

    [Fact]
    public void Being_unsure_of_many_readings_is_no_dangerous_situation()
    {
        var evaluation = RuleSet.Engine.Evaluate(Example((Accuracies,
            """[{"quantity":"beforePpm","absolute":20},{"quantity":"runningPeakPpm","absolute":20},{"quantity":"afterPpm","absolute":20},{"quantity":"co2Percent","absolute":1}]""")));

        Assert.True(evaluation.Findings.Count(finding => finding.Outcome == Outcome.Advisory) >= 4);
        Assert.DoesNotContain(evaluation.Findings, finding => finding.RuleId == RuleIds.AdvisoriesTogether && finding.Outcome == Outcome.Advisory);
    }

    private static Finding FlueCo(string co) =>
        Assert.Single(RuleSet.AnswersOf(RuleIds.FlueCo, RuleSet.Engine.Evaluate(Example((Accuracies, AnalyserAccuracies), (Reading + "/coPpm", co)))), finding => finding.Subject == Reading);
}
