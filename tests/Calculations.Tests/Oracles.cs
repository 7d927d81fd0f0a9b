using MathNet.Numerics.Distributions;
using MathNet.Numerics.OdeSolvers;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using LibraryBinomial = MathNet.Numerics.Distributions.Binomial;
using LibraryHypergeometric = MathNet.Numerics.Distributions.Hypergeometric;

namespace Calculations.Tests;

/// <summary>A library that works out the same while the tests run, in the version of Directory.Packages.props.</summary>
/// <param name="Call">Library and call, as a source would name them.</param>
/// <param name="Value">The library's answer to the inputs of a check value.</param>
/// <param name="Tolerance">Relative to the answer.</param>
internal sealed record Oracle(string Call, Func<Vector, double> Value, double Tolerance = 1e-12);

/// <summary>The computations that a library answers as well.</summary>
internal static class Oracles
{
    private const int Steps = 4000;
    // A tie counts as reached; in binary fractions it may come out a hair beside.
    private const double Tie = 1e-12;

    public static IReadOnlyDictionary<string, Oracle> ByName { get; } = new Dictionary<string, Oracle>(StringComparer.Ordinal)
    {
        ["readings.riseProbability"] = new("MathNet.Numerics, Normal.CDF", v => Normal.CDF(
            0, double.Hypot(v.Number("uEarlier"), v.Number("uLater")), v.Number("earlier") - v.Number("later")), 1e-9),
        ["combustion.ratio"] = new("UnitsNet, Ratio / Ratio", v =>
            Ratio.FromPartsPerMillion(v.Number("coPpm")) / Ratio.FromPercent(v.Number("co2Percent"))),
        ["heatInput.metricRate"] = new("UnitsNet, Volume / Duration", v =>
            (Volume.FromCubicMeters(v.Number("volumeM3")) / Duration.FromSeconds(v.Number("seconds"))).CubicMetersPerHour),
        ["heatInput.imperialRate"] = new("UnitsNet, Volume / Duration", v =>
            (Volume.FromCubicFeet(v.Number("volumeFt3")) / Duration.FromSeconds(v.Number("seconds"))).CubicFeetPerHour),
        ["heatInput.grossKw"] = new("UnitsNet, EnergyDensity * Volume / Duration", v =>
            Kilowatts(EnergyDensity.FromMegajoulesPerCubicMeter(v.Number("cvMjPerM3")) * Volume.FromCubicMeters(v.Number("rateM3PerHour")))),
        // 3412.142 Btu/h a kilowatt is rounded to a few parts in 10^7.
        ["heatInput.imperialGrossKw"] = new("UnitsNet, Energy / Duration", v =>
            Kilowatts(Energy.FromBritishThermalUnits(v.Number("rateFt3PerHour") * v.Number("cvBtuPerFt3"))), 1e-6),
        ["gasRate.energy"] = new("UnitsNet, EnergyDensity.CombustionEnergy", v => EnergyDensity.CombustionEnergy(
            EnergyDensity.FromMegajoulesPerCubicMeter(v.Number("cvMjPerM3")),
            Volume.FromCubicMeters(v.Number("volumeM3")),
            Ratio.FromDecimalFractions(v.Number("conversion"))).KilowattHours),
        ["volume.pipe"] = new("UnitsNet, Area.FromCircleDiameter * Length", v =>
            (Area.FromCircleDiameter(Length.FromMillimeters(v.Number("boreMm"))) * Length.FromMeters(1)).CubicMeters),
        ["vessel.staticHead"] = new("UnitsNet, Density * Acceleration * Length", v =>
            (Density.FromKilogramsPerCubicMeter(1000) * Acceleration.FromStandardGravity(1) * Length.FromMeters(v.Number("heightM"))).Bars),

        ["conformity.atMost"] = new("MathNet.Numerics, Normal.CDF", v =>
            Normal.CDF(v.Number("reading"), v.Number("u"), v.Number("limit")), 1e-9),
        ["conformity.atLeast"] = new("MathNet.Numerics, Normal.CDF", v =>
            Normal.CDF(-v.Number("reading"), v.Number("u"), -v.Number("limit")), 1e-9),
        ["conformity.between"] = new("MathNet.Numerics, Normal.CDF", v =>
            Normal.CDF(v.Number("reading"), v.Number("u"), v.Number("upper")) - Normal.CDF(v.Number("reading"), v.Number("u"), v.Number("lower")), 1e-9),

        ["room.co"] = new("MathNet.Numerics, RungeKutta.FourthOrder on the balance dC/dt = G/V - nC", v =>
            RoomPpm(v, v.Number("hours"), v.Number("startPpm")), 1e-9),
        ["room.steady"] = new("MathNet.Numerics, RungeKutta.FourthOrder on the same balance, 40 air changes long", v =>
            RoomPpm(v, 40 / v.Number("airChanges"), 0), 1e-9),
        ["room.hoursTo"] = new("MathNet.Numerics, Brent.FindRoot on RungeKutta.FourthOrder of the same balance", v =>
            Brent.FindRoot(hours => RoomPpm(v, hours, 0) - v.Number("coPpm"), 1e-3, 40 / v.Number("airChanges"), 1e-9), 1e-7),

        ["chance.chiSquare"] = new("MathNet.Numerics, ChiSquared.CDF", v => 1 - ChiSquared.CDF(v.Number("degreesOfFreedom"), v.Number("value")), 1e-9),
        ["chance.poisson"] = new("MathNet.Numerics, Poisson.CDF", v => 1 - Poisson.CDF(v.Number("mean"), v.Number("count") - 1), 1e-9),
        ["hypergeometric.atMost"] = new("MathNet.Numerics, Hypergeometric.CDF", v =>
            LibraryHypergeometric.CDF((int)v.Number("population"), (int)v.Number("faulty"), (int)v.Number("drawn"), v.Number("found")), 1e-9),
        ["inspection.size"] = new("MathNet.Numerics, Hypergeometric.CDF, least draw that leaves no more than the doubt", v =>
            Enumerable.Range(1, (int)v.Number("population")).First(drawn =>
                LibraryHypergeometric.CDF((int)v.Number("population"), (int)v.Number("tolerable"), drawn, v.Number("allowed")) <= Doubt(v) + Tie)),
        ["inspection.sizeOfUnlimited"] = new("MathNet.Numerics, Binomial.CDF, least draw that leaves no more than the doubt", v =>
            Enumerable.Range(1, 1000).First(drawn => LibraryBinomial.CDF(v.Number("tolerablePercent") / 100, drawn, v.Number("allowed")) <= Doubt(v) + Tie)),
        ["inspection.upperBound"] = new("MathNet.Numerics, Hypergeometric.CDF, most faulty ones that the doubt leaves", v =>
            Enumerable.Range(0, (int)(v.Number("population") - v.Number("visited") + v.Number("found")) + 1).Last(faulty =>
                LibraryHypergeometric.CDF((int)v.Number("population"), faulty, (int)v.Number("visited"), v.Number("found")) > Doubt(v) + Tie)),
    };

    private static double Doubt(Vector v) => 1 - v.Number("confidencePercent") / 100;

    private static double Kilowatts(Energy inAnHour) => Convert.ToDouble((inAnHour / Duration.FromHours(1)).Kilowatts);

    private static double RoomPpm(Vector v, double hours, double startPpm)
    {
        var gained = 1e6 * v.Number("coM3PerHour") / v.Number("roomM3");
        var changes = v.Number("airChanges");
        return RungeKutta.FourthOrder(startPpm, 0, hours, Steps, (_, ppm) => gained - changes * ppm)[^1];
    }
}
