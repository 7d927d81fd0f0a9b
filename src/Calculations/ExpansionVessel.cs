namespace Calculations;

/// <summary>Expansion vessel of a sealed heating circuit. All pressures in bar gauge. In decimal.</summary>
public static class ExpansionVessel
{
    private const decimal AtmosphereBar = 1m;

    /// <summary>Static head of cold water, bar: 1000 kg/m3 x 9.80665 m/s2 x height. The trade rounds it to 0.1 bar a metre.</summary>
    /// <param name="heightM">Height of the highest point above the vessel, m, 0 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside its range.</exception>
    public static decimal StaticHeadBar(decimal heightM) => Guard.Within(heightM, 0m, 200m) * 0.0980665m;

    /// <summary>
    /// Vessel volume by the trade form, litre: V = e C / (1 - p1/p2), p1 and p2 absolute (gauge + 1). Boyle's law, precharge = cold fill.
    /// </summary>
    /// <param name="expansionFraction">Expansion of the water from cold to the highest flow temperature, above 0 to 0.1.</param>
    /// <param name="systemLitre">Water content of the system, litre, above 0 to 100 000.</param>
    /// <param name="coldFillBar">Cold fill pressure, bar gauge, 0 to 10.</param>
    /// <param name="finalBar">Pressure when hot, bar gauge, above the cold fill to 20; commonly the relief setting less 10 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal TradeVolumeLitre(decimal expansionFraction, decimal systemLitre, decimal coldFillBar, decimal finalBar)
    {
        Guard.Above(expansionFraction, 0m, 0.1m);
        Guard.Above(systemLitre, 0m, 100_000m);
        Guard.Within(coldFillBar, 0m, 10m);
        Guard.Above(finalBar, coldFillBar, 20m);
        return expansionFraction * systemLitre * (finalBar + AtmosphereBar) / (finalBar - coldFillBar);
    }

    /// <summary>Expansion of water from 10 C, as a fraction: rho(10) / rho(t) - 1. See <see cref="Water.DensityKgPerM3"/>.</summary>
    /// <param name="maxFlowC">Highest flow temperature, degree Celsius, 10 to 110.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static decimal ExpansionFromTenC(decimal maxFlowC) =>
        Math.Round((decimal)(Water.DensityKgPerM3(10) / Water.DensityKgPerM3((double)Guard.Within(maxFlowC, 10m, 110m)) - 1), 6);
}
