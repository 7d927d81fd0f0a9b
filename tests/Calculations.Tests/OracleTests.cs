using CsCheck;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using NodaTime;
using UnitsNet;

namespace Calculations.Tests;

/// <summary>General libraries as live judges: UnitsNet for conversions, MathNet.Numerics for statistics, NodaTime for dates.</summary>
public class OracleTests
{
    [Fact]
    public void Unit_constants_are_those_of_a_units_library()
    {
        Same(Convert.ToDouble(Power.FromKilowatts(1).BritishThermalUnitsPerHour), (double)HeatInput.BtuPerHourPerKw, 1e-3);
        Same(Volume.FromCubicFeet(1).CubicMeters, (double)GasRate.M3PerFt3, 1e-15);
        Same(Volume.FromCubicFeet(100).CubicMeters, (double)GasRate.M3PerImperialUnit, 0.002);
        Same(Pressure.FromAtmospheres(1).Pascals, Constants.StandardPressurePa, 1e-9);
        Same(Pressure.FromAtmospheres(1).Millibars, Constants.StandardPressureMbar, 1e-9);
        Same(Temperature.FromDegreesCelsius(0).Kelvins, Constants.ZeroCelsiusK, 1e-9);
        Same(Energy.FromKilowattHours(1).Megajoules, Constants.MjPerKwh, 1e-9);
        Same(Acceleration.FromStandardGravity(1).MetersPerSecondSquared, Constants.GravityMPerS2, 1e-9);

        static void Same(double library, double ours, double tolerance) => Assert.Equal(library, ours, tolerance);
    }

    [Fact]
    public void The_same_gas_through_a_metric_and_an_imperial_meter_is_the_same_heat() =>
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[30, 200], Gen.Double[37, 42]).Sample((ft3, seconds, mjPerM3) =>
        {
            var m3 = Volume.FromCubicFeet(ft3).CubicMeters;
            var btuPerFt3 = Energy.FromMegajoules(mjPerM3 * Volume.FromCubicFeet(1).CubicMeters).BritishThermalUnits;
            var metric = HeatInput.GrossKw(HeatInput.MetricRateM3PerHour((decimal)m3, (decimal)seconds), (decimal)mjPerM3);
            var imperial = HeatInput.ImperialGrossKw(HeatInput.ImperialRateFt3PerHour((decimal)ft3, (decimal)seconds), (decimal)btuPerFt3);
            Assert.Equal((double)metric, (double)imperial, 1e-5 * (double)metric);
        });

    [Fact]
    public void Conformity_follows_the_normal_distribution_into_both_tails() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[0.1, 10], Gen.Double[-8, 8]).Sample((value, u, z) =>
        {
            var expected = Normal.CDF(value, u, value + z * u);
            var measured = new Measured(value, u);
            Assert.Equal(expected, Conformity.AtMost(measured, value + z * u), 1e-9 * expected + 1e-13);
            Assert.Equal(1 - expected, Conformity.AtLeast(measured, value + z * u), 1e-12);
            Assert.Equal(Normal.CDF(0, 1, z + 1) - Normal.CDF(0, 1, z), Conformity.Between(new(0, 1), z, z + 1), 1e-12);
        });

    [Fact]
    public void First_order_uncertainty_agrees_with_a_simulation()
    {
        var measured = new[] { new Measured(120, 6), new Measured(9.2, 0.15) };
        static double Ratio(IReadOnlyList<double> x) => x[0] / (10_000 * x[1]);
        var random = new Random(20260401);
        var draws = measured.Select(m => Normal.Samples(random, m.Value, m.StandardUncertainty).Take(200_000).ToArray()).ToArray();
        var simulated = draws[0].Zip(draws[1], (co, co2) => Ratio([co, co2])).StandardDeviation();

        Assert.Equal(simulated, Uncertainty.Combined(Ratio, measured), 0.01 * simulated);
        Assert.Equal(Uncertainty.OfRatio(measured[0], measured[1]), Uncertainty.Combined(Ratio, measured), 1e-9);
    }

    [Fact]
    public void Loss_uncertainty_agrees_with_a_simulation()
    {
        var measured = new[] { new Measured(160, 2), new Measured(20, 1), new Measured(5, 0.2) };
        static double Loss(IReadOnlyList<double> x) => FlueLoss.SiegertFromO2Percent(x[0], x[1], x[2], GasFamily.NaturalGas, 21);
        var random = new Random(20260402);
        var draws = measured.Select(m => Normal.Samples(random, m.Value, m.StandardUncertainty).Take(100_000).ToArray()).ToArray();
        var simulated = Enumerable.Range(0, 100_000).Select(i => Loss([draws[0][i], draws[1][i], draws[2][i]])).StandardDeviation();

        Assert.Equal(simulated, Uncertainty.Combined(Loss, measured), 0.01 * simulated);
    }

    [Fact]
    public void The_hypergeometric_distribution_is_that_of_a_statistics_library() =>
        Gen.Int[1, 3000].SelectMany(population => Gen.Select(Gen.Const(population), Gen.Int[0, population], Gen.Int[0, population], Gen.Int[0, 40])).Sample((population, faulty, drawn, found) =>
            Assert.Equal(new MathNet.Numerics.Distributions.Hypergeometric(population, faulty, drawn).CumulativeDistribution(found), Hypergeometric.AtMost(population, faulty, drawn, found), 1e-8));

    [Fact]
    public void Over_a_century_the_landlord_calendar_adds_months_as_a_date_library_does()
    {
        for (var day = new DateOnly(1998, 10, 31); day < new DateOnly(2098, 10, 31); day = day.AddDays(1))
        {
            var deadline = new LocalDate(day.Year, day.Month, day.Day).PlusMonths(12);
            var dates = LandlordCalendar.Check(day, day);
            Assert.Equal(deadline.ToDateOnly(), dates.Deadline);
            Assert.Equal(deadline.PlusMonths(-2).PlusDays(1).ToDateOnly(), dates.WindowStart);
        }
    }

    [Fact]
    public void Whatever_the_day_the_calendar_keeps_its_rules() =>
        Gen.Select(Gen.Int[0, 36_524], Gen.Int[-55, 800]).Sample((offset, after) =>
        {
            var previous = new DateOnly(1998, 10, 31).AddDays(offset);
            var made = previous.AddDays(after);
            var dates = LandlordCalendar.Check(previous, made);
            var inWindow = made >= dates.WindowStart && made <= dates.Deadline;
            Assert.Equal(inWindow ? dates.Deadline : made, dates.Deemed);
            Assert.Equal(Math.Max(0, Period.DaysBetween(LocalDate.FromDateOnly(dates.Deadline), LocalDate.FromDateOnly(made))), dates.DaysLate);
            Assert.Equal(LocalDate.FromDateOnly(dates.Deemed).PlusMonths(12).ToDateOnly(), dates.NextDeadline);
            Assert.Equal(made == dates.Deadline || made == dates.WindowStart.AddDays(-1), dates.Disputed != DisputedDay.None);
        });

    [Fact]
    public void A_leap_day_chained_over_four_years_ends_on_the_28th() =>
        Assert.Equal(
            new DateOnly(2028, 2, 28),
            Enumerable.Range(0, 4).Aggregate(new DateOnly(2024, 2, 29), (deemed, _) => LandlordCalendar.Deadline(deemed)));
}
