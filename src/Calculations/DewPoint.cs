namespace Calculations;

/// <summary>
/// Saturation of water vapour, in double: the vapour-pressure equation of W. Wagner and A. Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387,
/// ln(p/pc) = (Tc/T) sum a_i theta^n_i, theta = 1 - T/Tc. Within 2e-4 of IAPWS-IF97. Range: triple point to critical point.
/// </summary>
public static class DewPoint
{
    private const double CriticalK = 647.096;
    private const double CriticalPa = 22.064e6;

    /// <summary>Lowest temperature of the equation, degree Celsius: the triple point.</summary>
    public const double TripleC = 0.01;

    /// <summary>Highest temperature of the equation, degree Celsius: the critical point.</summary>
    public const double CriticalC = CriticalK - Constants.ZeroCelsiusK;

    /// <summary>Saturation pressure of water, Pa.</summary>
    /// <param name="celsius">Temperature, degree Celsius, 0.01 to 373.946.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static double SaturationPressurePa(double celsius)
    {
        var kelvin = Constants.Kelvin(Guard.Within(celsius, TripleC, CriticalC));
        var theta = 1 - kelvin / CriticalK;
        var sum = -7.85951783 * theta + 1.84408259 * Math.Pow(theta, 1.5) - 11.7866497 * Math.Pow(theta, 3)
            + 22.6807411 * Math.Pow(theta, 3.5) - 15.9618719 * Math.Pow(theta, 4) + 1.80122502 * Math.Pow(theta, 7.5);
        return CriticalPa * Math.Exp(CriticalK / kelvin * sum);
    }

    /// <summary>Saturation temperature, degree Celsius: the inverse of <see cref="SaturationPressurePa"/>, by bisection.</summary>
    /// <param name="vapourPa">Partial pressure of water vapour, Pa, from 611.6571 (triple point) to 22.064e6.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is outside its range.</exception>
    public static double SaturationC(double vapourPa)
    {
        Guard.Within(vapourPa, SaturationPressurePa(TripleC), CriticalPa);
        double low = TripleC, high = CriticalC;
        while (high - low > 1e-9)
        {
            var middle = (low + high) / 2;
            (low, high) = SaturationPressurePa(middle) < vapourPa ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Dew point of flue gas, degree Celsius: the saturation temperature at the partial pressure x_w p.</summary>
    /// <param name="flueGas">The flue gas.</param>
    /// <param name="pressurePa">Absolute pressure in the flue, Pa, 80 000 to 110 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the flue gas is drier than the triple point.</exception>
    public static double OfFlueGasC(FlueProducts flueGas, double pressurePa = Constants.StandardPressurePa) =>
        SaturationC(flueGas.WaterPercent / 100 * Guard.Within(pressurePa, 80_000, 110_000));
}
