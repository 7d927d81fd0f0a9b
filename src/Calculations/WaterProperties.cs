namespace Calculations;

/// <summary>Properties of liquid water in a heating circuit, in double.</summary>
public static class WaterProperties
{
    /// <summary>
    /// Density of air-free water, kg/m3: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16, at 101.325 kPa.
    /// Within 1.1e-4 of IAPWS-IF97 at 3 bar absolute.
    /// </summary>
    /// <param name="celsius">Temperature, degree Celsius, 0 to 110 (above 100 for pressurised circuits).</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static double DensityKgPerM3(double celsius)
    {
        var t = Guard.Within(celsius, 0, 110);
        return (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12)))))
            / (1 + 16.879850e-3 * t);
    }

    /// <summary>
    /// Isobaric heat capacity, kJ/(kg K): a fourth-degree fit to IAPWS-IF97 at 3 bar absolute, within 4e-4.
    /// </summary>
    /// <param name="celsius">Temperature, degree Celsius, 5 to 110.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static double HeatCapacityKjPerKgK(double celsius)
    {
        var t = Guard.Within(celsius, 5, 110) / 100;
        return 4.2119 + t * (-0.2066 + t * (0.4097 + t * (-0.3132 + t * 0.1142)));
    }
}
