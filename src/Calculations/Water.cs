namespace Calculations;

/// <summary>Properties of liquid water near atmospheric pressure, in double.</summary>
public static class Water
{
    /// <summary>
    /// Density of air-free water at 101.325 kPa, kg/m3: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, rational polynomial
    /// (coefficients from memory, agreeing with IAPWS-IF97 within 2e-4 over the range; pressure to 3 bar adds below 1.5e-4).
    /// </summary>
    /// <param name="celsius">Temperature, degree Celsius, 0 to 110 (above 100 for pressurised circuits).</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static double DensityKgPerM3(double celsius)
    {
        var t = Guard.Within(celsius, 0, 110);
        return (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12)))))
            / (1 + 16.879850e-3 * t);
    }
}
