namespace Calculations;

/// <summary>
/// Heat exchanger figures, in double, by the effectiveness-NTU method (any textbook of heat transfer; the tests of the ht library). A flue
/// temperature says something of the exchanger only beside the return temperature and the load:
/// see <see cref="ExchangerReading.From"/>. Below the dew point the single-phase model only ranks readings.
/// </summary>
public static class HeatExchange
{
    /// <summary>Effectiveness of a counterflow exchanger, dimensionless: (1 - e^-N(1-C)) / (1 - C e^-N(1-C)); N/(1+N) at C = 1.</summary>
    /// <param name="transferUnits">Number of transfer units N, 0 to 100.</param>
    /// <param name="capacityRatio">Smaller over larger heat-capacity flow C, 0 (boiling or near-constant side) to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double CounterflowEffectiveness(double transferUnits, double capacityRatio)
    {
        Guard.Within(transferUnits, 0, 100);
        if (Guard.Within(capacityRatio, 0, 1) == 1)
        {
            return transferUnits / (1 + transferUnits);
        }

        var decay = Math.Exp(-transferUnits * (1 - capacityRatio));
        return (1 - decay) / (1 - capacityRatio * decay);
    }

    /// <summary>
    /// Transfer units of a boiler's exchanger, dimensionless, water side taken as constant (C = 0):
    /// ln((t_gas,in - t_return) / (t_flue - t_return)). Fouling lowers it.
    /// </summary>
    /// <param name="gasInC">Temperature of the burnt gas, degree Celsius, above the flue's to 2200; the same assumption on every visit.</param>
    /// <param name="flueC">Flue temperature, degree Celsius, above the return's to 600.</param>
    /// <param name="returnC">Return temperature, degree Celsius, 5 to 110.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double TransferUnits(double gasInC, double flueC, double returnC) =>
        Math.Log((Guard.Above(gasInC, flueC, 2200) - returnC) / ApproachAbove(flueC, returnC));

    private static double ApproachAbove(double flueC, double returnC) => Guard.Above(flueC, Guard.Within(returnC, 5, 110), 600) - returnC;
}

/// <summary>A flue temperature that can be compared with another visit's, because its return temperature and load are known.</summary>
public sealed record ExchangerReading
{
    private ExchangerReading(decimal flueC, decimal returnC, decimal loadPercent) =>
        (FlueC, ReturnC, LoadPercent) = (flueC, returnC, loadPercent);

    /// <summary>Flue temperature, degree Celsius.</summary>
    public decimal FlueC { get; }

    /// <summary>Return temperature, degree Celsius.</summary>
    public decimal ReturnC { get; }

    /// <summary>Load, per cent of rated heat input.</summary>
    public decimal LoadPercent { get; }

    /// <summary>Approach, K: flue temperature - return temperature.</summary>
    public decimal ApproachK => FlueC - ReturnC;

    /// <summary>A comparable reading, or null ("not comparable") where return temperature or load was not recorded.</summary>
    /// <param name="flueC">Flue temperature, degree Celsius, 5 to 600.</param>
    /// <param name="returnC">Return temperature, degree Celsius, 5 to 110.</param>
    /// <param name="loadPercent">Load, per cent, above 0 to 120.</param>
    /// <exception cref="ArgumentOutOfRangeException">A recorded value is outside its range.</exception>
    public static ExchangerReading? From(decimal? flueC, decimal? returnC, decimal? loadPercent) =>
        flueC is { } flue && returnC is { } back && loadPercent is { } load
            ? new(Guard.Within(flue, 5m, 600m), Guard.Within(back, 5m, 110m), Guard.Above(load, 0m, 120m))
            : null;
}
