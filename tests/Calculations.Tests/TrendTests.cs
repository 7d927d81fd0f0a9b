namespace Calculations.Tests;

/// <summary>Histories without a drift are told as often as the test says, and planted drifts are found.</summary>
public class TrendTests
{
    private const double Told = 0.05;
    private const int Histories = 20_000;

    [Theory]
    [InlineData(new double[] { 1, 2, 3, 4 })]
    [InlineData(new double[] { 2, 2, 1, 3, 3 })]
    [InlineData(new double[] { 1, 1, 1, 2 })]
    [InlineData(new double[] { 4, 4, 4 })]
    [InlineData(new double[] { 3, 1, 2, 2, 5, 4 })]
    public void The_probability_is_the_share_of_all_orders_that_score_as_high(double[] values)
    {
        var scores = OrdersOf(values).Select(MannKendall.Score).ToList();

        Assert.Equal(scores.Count(score => score >= MannKendall.Score(values)) / (double)scores.Count, MannKendall.ProbabilityOfRise(values), 12);
    }

    [Theory]
    [InlineData(3, 1 / 6.0)]
    [InlineData(4, 1 / 24.0)]
    [InlineData(5, 5 / 120.0)]
    [InlineData(6, 20 / 720.0)]
    [InlineData(7, 174 / 5040.0)]
    [InlineData(10, 131_635 / 3_628_800.0)]
    public void A_steady_history_is_told_as_often_as_the_test_says(int visits, double level)
    {
        var dice = new Random(visits);
        var threshold = Math.Max(level, Told);
        var told = Enumerable.Range(0, Histories).Count(_ => MannKendall.ProbabilityOfRise(Noise(dice, visits, drift: 0)) <= threshold + 1e-12);

        AssertRate(level, told);
    }

    [Fact]
    public void Two_readings_of_one_value_are_told_apart_as_often_as_the_test_says()
    {
        var dice = new Random(2);
        var told = Enumerable.Range(0, Histories).Count(_ =>
            Noise(dice, 2, drift: 0) is [var earlier, var later] && TwoReadings.ProbabilityOfRise(new(earlier, 1), new(later, 1)) < Told);

        AssertRate(Told, told);
    }

    [Theory]
    [InlineData(8, 1.0, 0.99)]
    [InlineData(6, 1.0, 0.78)]
    [InlineData(5, 2.0, 0.95)]
    [InlineData(4, 3.0, 0.90)]
    public void A_planted_drift_is_found(int visits, double deviationsAVisit, double atLeast)
    {
        var dice = new Random(visits);
        var found = Enumerable.Range(0, Histories).Count(_ => MannKendall.ProbabilityOfRise(Noise(dice, visits, deviationsAVisit)) < Told);

        Assert.InRange(found / (double)Histories, atLeast, 1);
    }

    [Fact]
    public void A_wild_value_does_not_move_the_slope()
    {
        Assert.Equal(1, TheilSen.Slope([(0, 0), (1, 1), (2, 2), (3, 900), (4, 4)]), 12);
        Assert.Equal(2, TheilSen.Slope([(0, 0), (1, 5), (3, 6), (7, 14)]), 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => TheilSen.Slope([(1, 2), (1, 3)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MannKendall.Score([1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MannKendall.ProbabilityOfRise([1, double.NaN]));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoReadings.Z(new(1, 0), new(2, 1)));
    }

    private static void AssertRate(double expected, int told) =>
        Assert.InRange(told / (double)Histories, expected - (4 * Error(expected)), expected + (4 * Error(expected)));

    private static double Error(double rate) => Math.Sqrt(rate * (1 - rate) / Histories);

    /// <summary>Normal noise of deviation 1 (Box and Muller) on a straight line.</summary>
    private static double[] Noise(Random dice, int visits, double drift) =>
        [.. Enumerable.Range(0, visits).Select(visit => (drift * visit) + (Math.Sqrt(-2 * Math.Log(1 - dice.NextDouble())) * Math.Cos(2 * Math.PI * dice.NextDouble())))];

    private static IEnumerable<double[]> OrdersOf(double[] values) => values.Length == 0
        ? [[]]
        : values.Index().SelectMany(first => OrdersOf([.. values.Where((_, index) => index != first.Index)]).Select(rest => (double[])[first.Item, .. rest]));
}
