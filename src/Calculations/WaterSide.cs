namespace Calculations;

/// <summary>
/// Heat and flow on the water side of a boiler, in double: Q = m cp (t_flow - t_return), cp at the mean temperature; within 0.1 % of the
/// difference of enthalpies by IAPWS-IF97. Water without glycol.
/// </summary>
public static class WaterSide
{
    /// <summary>Heat to the water, kW: m cp (t_flow - t_return).</summary>
    /// <param name="kgPerSecond">Mass flow, kg/s, 0 to 1000.</param>
    /// <param name="flowC">Flow temperature, degree Celsius, from the return's to 110.</param>
    /// <param name="returnC">Return temperature, degree Celsius, 5 to 110.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double HeatKw(double kgPerSecond, double flowC, double returnC) =>
        Guard.Within(kgPerSecond, 0, 1000) * KjPerKg(flowC, returnC);

    /// <summary>Mass flow that carries a heat, kg/s: Q / (cp (t_flow - t_return)).</summary>
    /// <param name="heatKw">Heat to the water, kW, 0 to 100 000.</param>
    /// <param name="flowC">Flow temperature, degree Celsius, above the return's to 110.</param>
    /// <param name="returnC">Return temperature, degree Celsius, 5 to 110.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double FlowKgPerSecond(double heatKw, double flowC, double returnC) =>
        Guard.Within(heatKw, 0, 100_000) / KjPerKg(Guard.Above(flowC, returnC, 110), returnC);

    /// <summary>Mass flow as volume flow, litre/min, at the temperature where it is metered: 60 000 m / density.</summary>
    /// <param name="kgPerSecond">Mass flow, kg/s, 0 to 1000.</param>
    /// <param name="celsius">Temperature, degree Celsius, 0 to 110.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double LitrePerMinute(double kgPerSecond, double celsius) =>
        Guard.Within(kgPerSecond, 0, 1000) * 60_000 / WaterProperties.DensityKgPerM3(celsius);

    private static double KjPerKg(double flowC, double returnC) =>
        WaterProperties.HeatCapacityKjPerKgK((Guard.Within(flowC, Guard.Within(returnC, 5, 110), 110) + returnC) / 2) * (flowC - returnC);
}
