namespace Calculations;

/// <summary>
/// Heat input from a timed gas meter, in decimal and uncorrected: the reading as it stands on the record. Plain arithmetic of units; what a
/// meter at 5 degree Celsius and 20 mbar holds besides is 5.6 % (<see cref="GasRate.ToReferenceVolume"/>).
/// </summary>
public static class HeatInput
{
    private const int SecondsPerHour = 3600;
    private const decimal MjPerKwh = 3.6m;

    /// <summary>1 kW in Btu(IT)/h: 1 / 0.000 293 071 070 17. The trade rounds it to 3412.</summary>
    public const decimal BtuPerHourPerKw = 3412.142m;

    /// <summary>Gas rate, m3/h: 3600 V / t.</summary>
    /// <param name="volumeM3">Metered volume, m3, above 0 to 100.</param>
    /// <param name="seconds">Timed interval, s, above 0 to 86 400.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal MetricRateM3PerHour(decimal volumeM3, decimal seconds) =>
        SecondsPerHour * Guard.Above(volumeM3, 0m, 100m) / CheckSeconds(seconds);

    /// <summary>Gas rate, ft3/h: 3600 V / t.</summary>
    /// <param name="volumeFt3">Metered volume, ft3, above 0 to 3500.</param>
    /// <param name="seconds">Timed interval, s, above 0 to 86 400.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal ImperialRateFt3PerHour(decimal volumeFt3, decimal seconds) =>
        SecondsPerHour * Guard.Above(volumeFt3, 0m, 3500m) / CheckSeconds(seconds);

    /// <summary>Heat input on gross calorific value, kW: rate x CV / 3.6.</summary>
    /// <param name="rateM3PerHour">Gas rate, m3/h, above 0 to 10 000.</param>
    /// <param name="grossCvMjPerM3">Gross calorific value, MJ/m3, 10 to 150 (town gas to butane).</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal GrossKw(decimal rateM3PerHour, decimal grossCvMjPerM3) =>
        Guard.Above(rateM3PerHour, 0m, 10_000m) * Guard.Within(grossCvMjPerM3, 10m, 150m) / MjPerKwh;

    /// <summary>Heat input on gross calorific value, kW, from an imperial meter: rate x CV / 3412.142.</summary>
    /// <param name="rateFt3PerHour">Gas rate, ft3/h, above 0 to 350 000.</param>
    /// <param name="grossCvBtuPerFt3">Gross calorific value, Btu/ft3, 250 to 4000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal ImperialGrossKw(decimal rateFt3PerHour, decimal grossCvBtuPerFt3) =>
        Guard.Above(rateFt3PerHour, 0m, 350_000m) * Guard.Within(grossCvBtuPerFt3, 250m, 4000m) / BtuPerHourPerKw;

    /// <summary>
    /// Net heat input, kW, by the trade's divisor of the fuel: gross / 1.11, 1.09 or 1.08. Within 0.5 % of ISO 6976:2016; see
    /// <see cref="GasFamilies.GrossToNet"/>.
    /// </summary>
    /// <param name="grossKw">Gross heat input, kW, 0 to 100 000.</param>
    /// <param name="gas">The fuel.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal NetKw(decimal grossKw, GasFamily gas) => CheckKw(grossKw) / gas.GrossToNet();

    /// <summary>Gross heat input, kW, of a net figure: the inverse of <see cref="NetKw"/>.</summary>
    /// <param name="netKw">Net heat input, kW, 0 to 100 000.</param>
    /// <param name="gas">The fuel.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal GrossKwFromNet(decimal netKw, GasFamily gas) => CheckKw(netKw) * gas.GrossToNet();

    private static decimal CheckSeconds(decimal seconds) => Guard.Above(seconds, 0m, 86_400m);

    private static decimal CheckKw(decimal kw) => Guard.Within(kw, 0m, 100_000m);
}
