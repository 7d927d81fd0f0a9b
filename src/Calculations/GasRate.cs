namespace Calculations;

/// <summary>
/// Metered gas referred to reference conditions, and billed energy, in decimal. The Gas (Calculation of Thermal Energy) Regulations 1996
/// (SI 1996/439) are "the regulations" below.
/// </summary>
public static class GasRate
{
    /// <summary>The factor of the regulations' standard conversion, as printed on bills. Kept as the literal that bills print.</summary>
    public const decimal BillingConversion = 1.02264m;

    /// <summary>Cubic metres in one unit of an imperial meter (100 ft3), as billed.</summary>
    public const decimal M3PerImperialUnit = 2.83m;

    /// <summary>Cubic metres in a cubic foot: exact, from the international foot.</summary>
    public const decimal M3PerFt3 = 0.028316846592m;

    /// <summary>
    /// Reference volume / metered volume, dimensionless: (288.15 / T)(p / 1013.25), T the gas temperature in kelvin,
    /// p = barometer + gauge. Reference: 15 degree Celsius, 1013.25 mbar (ISO 13443). Ideal gas: within
    /// 0.1 % of natural gas below 100 mbar gauge.
    /// </summary>
    /// <param name="meterC">Gas temperature at the meter, degree Celsius, -20 to 50.</param>
    /// <param name="meterGaugeMbar">Gauge pressure at the meter, mbar, 0 to 2000.</param>
    /// <param name="barometerMbar">Atmospheric pressure on site, mbar, 800 to 1100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal ToReferenceVolume(decimal meterC, decimal meterGaugeMbar, decimal barometerMbar) =>
        288.15m / (Guard.Within(meterC, -20m, 50m) + 273.15m)
        * (Guard.Within(barometerMbar, 800m, 1100m) + CheckGauge(meterGaugeMbar)) / 1013.25m;

    /// <summary>
    /// Pressure to deduct for height above sea level, mbar, by the table of the regulations' schedule: bands of 2.5 m, the value of the
    /// band's upper end. The table's step is 0.120 207 4 mbar a metre; the result is rounded to 0.001 as printed.
    /// </summary>
    /// <param name="heightM">Height above Ordnance Datum, m, -50 to 250 (rows read in the schedule); at or below 0 deducts nothing.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside its range.</exception>
    public static decimal AltitudeDeductionMbar(decimal heightM)
    {
        var bandTopM = Math.Max(0m, Math.Ceiling(Guard.Within(heightM, -50m, 250m) / 2.5m) * 2.5m);
        return Math.Round(bandTopM * 0.1202074m, 3, MidpointRounding.AwayFromZero);
    }

    /// <summary>
    /// Pressure conversion factor of the regulations, dimensionless: (1013.25 + M - A) / 1013.25, M the gauge pressure at the meter,
    /// A the <see cref="AltitudeDeductionMbar"/> (form of the equation from memory).
    /// </summary>
    /// <param name="meterGaugeMbar">Gauge pressure at the meter, mbar, 0 to 2000.</param>
    /// <param name="heightM">Height above Ordnance Datum, m, -50 to 250.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal PressureConversion(decimal meterGaugeMbar, decimal heightM) =>
        (1013.25m + CheckGauge(meterGaugeMbar) - AltitudeDeductionMbar(heightM)) / 1013.25m;

    /// <summary>Mean calorific value of a billing period, MJ/m3, less any amount below 0.1: regulation 3(2).</summary>
    /// <param name="dailyMjPerM3">Daily calorific values, MJ/m3, each 10 to 150, at least one.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no value, or one is outside its range.</exception>
    public static decimal BilledCvMjPerM3(IReadOnlyCollection<decimal> dailyMjPerM3)
    {
        Guard.Within(dailyMjPerM3.Count, 1, 100_000, nameof(dailyMjPerM3));
        return Math.Floor(dailyMjPerM3.Select(CheckCv).Average() * 10) / 10;
    }

    /// <summary>Energy, kWh: volume x conversion x CV / 3.6, regulation 3 and the bills of suppliers.</summary>
    /// <param name="volumeM3">Metered volume, m3, 0 to 1e9.</param>
    /// <param name="conversion">Reference volume / metered volume, 0.8 to 4, such as <see cref="BillingConversion"/>.</param>
    /// <param name="cvMjPerM3">Calorific value, MJ/m3, 10 to 150.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal EnergyKwh(decimal volumeM3, decimal conversion, decimal cvMjPerM3) =>
        Guard.Within(volumeM3, 0m, 1e9m) * Guard.Within(conversion, 0.8m, 4m) * CheckCv(cvMjPerM3) / 3.6m;

    /// <summary>Gas rate for a heat input, in the unit the calorific value is given per (m3/h or kg/h): 3.6 kW / CV, by definition.</summary>
    /// <param name="heatInputKw">Heat input, kW, 0 to 100 000, net or gross as the calorific value.</param>
    /// <param name="cvMjPerUnit">Calorific value, MJ per m3 or kg, 10 to 150.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal ForHeatInput(decimal heatInputKw, decimal cvMjPerUnit) =>
        Guard.Within(heatInputKw, 0m, 100_000m) * 3.6m / CheckCv(cvMjPerUnit);

    private static decimal CheckGauge(decimal gaugeMbar) => Guard.Within(gaugeMbar, 0m, 2000m);

    private static decimal CheckCv(decimal cvMjPerM3) => Guard.Within(cvMjPerM3, 10m, 150m);
}
