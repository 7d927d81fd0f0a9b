using Calculations;
using Kernel;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>Gas rate and heat input from a timed meter.</summary>
public static class GasRateComputations
{
    private static readonly ComputationInput Seconds = Within("seconds", "s", 0.1m, 86_400, 120, "timed interval");
    private static readonly ComputationInput RateM3 = Above("gasRateM3PerHour", "m3/h", 0, 10_000, 2.649m, "gas rate as metered");
    private static readonly ComputationInput Cv = Within("calorificValueMjPerM3", "MJ/m3", 10, 150, 39.2m, "gross calorific value");
    private static readonly ComputationInput MeterC = Within("meterTemperatureC", "Cel", -20, 50, 15, "gas temperature at the meter");
    private static readonly ComputationInput MeterMbar = Within("meterOperatingMbar", "mbar", 0, 2000, 20.8m, "gauge pressure at the meter");
    private static readonly ComputationInput Barometer =
        Within("barometerMbar", "mbar", 800, 1100, 1013.25m, "atmospheric pressure on site") with { Default = 1013.25m };

    /// <summary>Gas rate of a metric meter.</summary>
    public static readonly Computation GasRateM3 = new()
    {
        Name = "gasRate",
        What = "gas rate as metered",
        Inputs = [Above("volumeM3", "m3", 0, 100, 0.0883m, "metered volume"), Seconds],
        Unit = "m3/h",
        Template = "3600 x {volumeM3} / {seconds}",
        Source = "definition",
        Exact = v => HeatInput.MetricRateM3PerHour(v.Exact("volumeM3"), v.Exact("seconds")),
    };

    /// <summary>Gas rate of an imperial meter.</summary>
    public static readonly Computation GasRateFt3 = new()
    {
        Name = "gasRateFromFt3",
        What = "gas rate as metered in cubic feet",
        Inputs = [Above("volumeFt3", "[cft_i]", 0, 3500, 1, "metered volume"), Seconds],

        // Less, which no meter shows, the conversion could round to nothing.
        Demands = [("volumeFt3", "must be at least 0.000001 [cft_i]", v => v.Exact("volumeFt3") >= 0.000001m)],
        Unit = "m3/h",
        Template = "3600 x {volumeFt3} x 0.028316846592 / {seconds}",
        Source = "definition; the international foot is 0.3048 m exactly",
        Exact = v => HeatInput.MetricRateM3PerHour(v.Exact("volumeFt3") * GasRate.M3PerFt3, v.Exact("seconds")),
    };

    /// <summary>Gross heat input, uncorrected.</summary>
    public static readonly Computation HeatInputGross = new()
    {
        Name = "heatInputGross",
        What = "heat input on gross calorific value, without correction for temperature and pressure",
        Inputs = [RateM3, Cv],
        Unit = "kW",
        Template = "{gasRateM3PerHour} x {calorificValueMjPerM3} / 3.6",
        Source = "definition",
        Exact = v => HeatInput.GrossKw(v.Exact("gasRateM3PerHour"), v.Exact("calorificValueMjPerM3")),
    };

    /// <summary>Net heat input.</summary>
    public static readonly Computation HeatInputNet = new()
    {
        Name = "heatInputNet",
        What = "heat input on net calorific value",
        Inputs = [Fuel, Within("heatInputGrossKw", "kW", 0, 100_000, 28.8m, "gross heat input")],
        Unit = "kW",
        Template = "{heatInputGrossKw} / gross-to-net ratio of {fuel}",
        Source = "ratio of gross to net calorific value as the trade rounds it (common practice, no source)",
        Constants = v => [$"gross to net = {WireText.Of(v.Gas().GrossToNet())}"],
        Exact = v => HeatInput.NetKw(v.Exact("heatInputGrossKw"), v.Gas()),
    };

    /// <summary>Gross heat input of a net figure.</summary>
    public static readonly Computation GrossFromNet = new()
    {
        Name = "heatInputGrossFromNet",
        What = "gross heat input of a net figure",
        Inputs = [Fuel, Within("heatInputNetKw", "kW", 0, 100_000, 26, "net heat input")],
        Unit = "kW",
        Template = "{heatInputNetKw} x gross-to-net ratio of {fuel}",
        Source = HeatInputNet.Source,
        Constants = HeatInputNet.Constants,
        Exact = v => HeatInput.GrossKwFromNet(v.Exact("heatInputNetKw"), v.Gas()),
    };

    /// <summary>Reference volume of a metered volume.</summary>
    public static readonly Computation VolumeCorrection = new()
    {
        Name = "volumeCorrection",
        What = "volume at 15 Cel and 1013.25 mbar of each metered volume",
        Inputs = [MeterC, MeterMbar, Barometer],
        Unit = "1",
        Template = "288.15 / ({meterTemperatureC} + 273.15) x ({barometerMbar} + {meterOperatingMbar}) / 1013.25",
        Source = "ideal gas law",
        Exact = v => GasRate.ToReferenceVolume(v.Exact("meterTemperatureC"), v.Exact("meterOperatingMbar"), v.Exact("barometerMbar")),
    };

    /// <summary>Gross heat input, corrected.</summary>
    public static readonly Computation HeatInputCorrected = new()
    {
        Name = "heatInputGrossCorrected",
        What = "heat input on gross calorific value, volume referred to 15 Cel and 1013.25 mbar",
        Inputs = [RateM3, Cv, MeterC, MeterMbar, Barometer],
        Unit = "kW",
        Template = "{gasRateM3PerHour} x {calorificValueMjPerM3} / 3.6 x " + VolumeCorrection.Template,
        Source = "ideal gas law; the calorific value is one at 15 Cel and 1013.25 mbar",
        Exact = v => HeatInputGross.Exact!(v) * VolumeCorrection.Exact!(v),
    };

    /// <summary>Deviation of the heat input.</summary>
    public static readonly Computation HeatInputDeviation = new()
    {
        Name = "heatInputDeviation",
        What = "deviation of the measured heat input from the plate, or from the rate to which the boiler is range rated, on the plate's basis",
        Inputs = [Within("measuredKw", "kW", 0, 100_000, 25.99m, "measured heat input"), Within("plateKw", "kW", 0.1m, 100_000, 26, "heat input of the plate")],
        Unit = "%",
        Template = "100 x ({measuredKw} - {plateKw}) / {plateKw}",
        Source = "definition",
        Exact = v => (v.Exact("measuredKw") - v.Exact("plateKw")) / v.Exact("plateKw") * 100,
    };

    /// <summary>Billed energy.</summary>
    public static readonly Computation Energy = new()
    {
        Name = "energy",
        What = "energy of a metered volume",
        Inputs =
        [
            Within("volumeM3", "m3", 0, 1e9m, 2, "metered volume"),
            Within("conversion", "1", 0.8m, 4, 1.02264m, "reference volume for each metered volume") with { Default = GasRate.BillingConversion },
            Cv,
        ],
        Unit = "kW.h",
        Template = "{volumeM3} x {conversion} x {calorificValueMjPerM3} / 3.6",
        Source = "Gas (Calculation of Thermal Energy) Regulations 1996, SI 1996/439; factor as printed on bills",
        Exact = v => GasRate.EnergyKwh(v.Exact("volumeM3"), v.Exact("conversion"), v.Exact("calorificValueMjPerM3")),
    };

    /// <summary>Pressure lost between meter and appliance.</summary>
    public static readonly Computation PressureLoss = new()
    {
        Name = "supplyPressureLoss",
        What = "pressure lost between meter and appliance",
        Inputs = [MeterMbar, Within("applianceInletMbar", "mbar", 0, 2000, 20.1m, "gauge pressure at the appliance inlet")],
        Unit = "mbar",
        Template = "{meterOperatingMbar} - {applianceInletMbar}",
        Source = "definition",
        Exact = v => v.Exact("meterOperatingMbar") - v.Exact("applianceInletMbar"),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } =
        [GasRateM3, GasRateFt3, HeatInputGross, HeatInputNet, GrossFromNet, VolumeCorrection, HeatInputCorrected, HeatInputDeviation, Energy, PressureLoss];
}
