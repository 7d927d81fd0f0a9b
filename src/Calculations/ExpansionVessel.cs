namespace Calculations;

/// <summary>
/// Expansion vessel of a sealed heating circuit, in decimal. Pressures in bar gauge, the atmosphere taken as 1 bar (within 0.05 bar
/// up to 500 m); Boyle's law at constant gas temperature. The maker's instructions and the vessel's own limits come first.
/// </summary>
public static class ExpansionVessel
{
    private const int AtmosphereBar = 1;

    /// <summary>Static head of cold water, bar: 1000 kg/m3 x 9.80665 m/s2 x height. The trade rounds it to 0.1 bar a metre.</summary>
    /// <param name="heightM">Height of the highest point above the vessel, m, 0 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside its range.</exception>
    public static decimal StaticHeadBar(decimal heightM) => Guard.Within(heightM, 0m, 200m) * 0.0980665m;

    /// <summary>Lowest precharge, bar: static head + 0.3 bar against vapour (form of EN 12828 annex D, from memory; the trade's rule as well).</summary>
    /// <param name="heightM">Height of the highest point above the vessel, m, 0 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside its range.</exception>
    public static decimal LowestPrechargeBar(decimal heightM) => StaticHeadBar(heightM) + 0.3m;

    /// <summary>
    /// Highest working pressure below a relief valve, bar: setting - 0.5 bar up to 5 bar, setting - 10 % above
    /// (form of EN 12828 annex D, from memory).
    /// </summary>
    /// <param name="reliefBar">Relief setting, bar, 1 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">The setting is outside its range.</exception>
    public static decimal HighestWorkingBar(decimal reliefBar) => Guard.Within(reliefBar, 1m, 10m) <= 5m ? reliefBar - 0.5m : reliefBar * 0.9m;

    /// <summary>Expansion of water from 10 C, as a fraction: rho(10) / rho(t) - 1. See <see cref="WaterProperties.DensityKgPerM3"/>.</summary>
    /// <param name="maxFlowC">Highest flow temperature, degree Celsius, 10 to 110.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static decimal ExpansionFromTenC(decimal maxFlowC) =>
        Math.Round((decimal)(WaterProperties.DensityKgPerM3(10) / WaterProperties.DensityKgPerM3((double)Guard.Within(maxFlowC, 10m, 110m)) - 1), 6);

    /// <summary>
    /// Vessel volume by the trade form, litre: V = e C / (1 - p1/p2), p1 and p2 absolute; the ASHRAE form for diaphragm tanks without its term
    /// for the pipes' own expansion, so a little large. Takes the precharge to equal the cold fill.
    /// </summary>
    /// <param name="expansionFraction">Expansion of the water from cold to the highest flow temperature, above 0 to 0.1.</param>
    /// <param name="systemLitre">Water content of the system, litre, above 0 to 100 000.</param>
    /// <param name="coldFillBar">Cold fill pressure, bar, 0 to 10.</param>
    /// <param name="finalBar">Pressure when hot, bar, above the cold fill to 20; commonly the relief setting less 10 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal TradeVolumeLitre(decimal expansionFraction, decimal systemLitre, decimal coldFillBar, decimal finalBar) =>
        Guard.Above(expansionFraction, 0m, 0.1m) * CheckSystem(systemLitre) * PressureFactor(coldFillBar, finalBar);

    /// <summary>Water reserve, litre: 0.5 % of the system, at least 3 litre (form of EN 12828 annex D, from memory).</summary>
    /// <param name="systemLitre">Water content of the system, litre, above 0 to 100 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The content is outside its range.</exception>
    public static decimal ReserveLitre(decimal systemLitre) => Math.Max(3m, 0.005m * CheckSystem(systemLitre));

    /// <summary>Vessel volume with reserve, litre: (expansion + reserve)(pe + 1) / (pe - p0), Boyle's law.</summary>
    /// <param name="expansionLitre">Water that expansion moves, litre, above 0 to 10 000.</param>
    /// <param name="reserveLitre">Water reserve, litre, 0 to 1000.</param>
    /// <param name="prechargeBar">Precharge p0, bar, 0 to 10.</param>
    /// <param name="finalBar">Highest working pressure pe, bar, above the precharge to 20.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal VolumeWithReserveLitre(decimal expansionLitre, decimal reserveLitre, decimal prechargeBar, decimal finalBar) =>
        (Guard.Above(expansionLitre, 0m, 10_000m) + Guard.Within(reserveLitre, 0m, 1000m)) * PressureFactor(prechargeBar, finalBar);

    /// <summary>Cold fill that puts the reserve into the vessel, bar: V (p0 + 1) / (V - reserve) - 1, Boyle's law.</summary>
    /// <param name="vesselLitre">Vessel volume V, litre, above 0 to 10 000.</param>
    /// <param name="reserveLitre">Water reserve, litre, 0 to below the vessel's volume.</param>
    /// <param name="prechargeBar">Precharge p0, bar, 0 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal ReserveFillBar(decimal vesselLitre, decimal reserveLitre, decimal prechargeBar) =>
        CheckVessel(vesselLitre) * (CheckPressure(prechargeBar) + AtmosphereBar)
        / (vesselLitre - Guard.Below(reserveLitre, 0m, vesselLitre)) - AtmosphereBar;

    /// <summary>Water the vessel takes between cold fill and a final pressure, litre: gas volume when cold x (pe - pa) / (pe + 1).</summary>
    /// <param name="vesselLitre">Vessel volume, litre, above 0 to 10 000.</param>
    /// <param name="prechargeBar">Precharge p0, bar, 0 to 10.</param>
    /// <param name="coldFillBar">Cold fill pa, bar, 0 to 10; below the precharge the vessel starts to take water at the precharge.</param>
    /// <param name="finalBar">Final pressure pe, bar, above fill and precharge to 20.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static decimal AcceptanceLitre(decimal vesselLitre, decimal prechargeBar, decimal coldFillBar, decimal finalBar)
    {
        var (gasLitre, startBar) = WhenCold(vesselLitre, prechargeBar, coldFillBar);
        return gasLitre * (Guard.Above(finalBar, startBar, 20m) - startBar) / (finalBar + AtmosphereBar);
    }

    /// <summary>
    /// Pressure when hot, bar: (pa + 1) Vg / (Vg - expansion) - 1, Vg the gas volume when cold, V (p0 + 1) / (pa + 1). Followed over falling
    /// precharge it is the curve by which a lost precharge shows: a fill that seems right and a pressure that climbs to the relief setting.
    /// </summary>
    /// <param name="vesselLitre">Vessel volume V, litre, above 0 to 10 000.</param>
    /// <param name="prechargeBar">Precharge p0, bar, 0 to 10.</param>
    /// <param name="coldFillBar">Cold fill pa, bar, 0 to 10.</param>
    /// <param name="expansionLitre">Water that expansion moves, litre, 0 to below the gas volume when cold.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range: the vessel cannot take that expansion.</exception>
    public static decimal FinalBar(decimal vesselLitre, decimal prechargeBar, decimal coldFillBar, decimal expansionLitre)
    {
        var (gasLitre, startBar) = WhenCold(vesselLitre, prechargeBar, coldFillBar);
        return (startBar + AtmosphereBar) * gasLitre / (gasLitre - Guard.Below(expansionLitre, 0m, gasLitre)) - AtmosphereBar;
    }

    private static (decimal GasLitre, decimal StartBar) WhenCold(decimal vesselLitre, decimal prechargeBar, decimal coldFillBar)
    {
        var startBar = Math.Max(CheckPressure(prechargeBar), CheckPressure(coldFillBar));
        return (CheckVessel(vesselLitre) * (prechargeBar + AtmosphereBar) / (startBar + AtmosphereBar), startBar);
    }

    private static decimal PressureFactor(decimal lowBar, decimal highBar) =>
        (Guard.Above(highBar, CheckPressure(lowBar), 20m) + AtmosphereBar) / (highBar - lowBar);

    private static decimal CheckSystem(decimal systemLitre) => Guard.Above(systemLitre, 0m, 100_000m);

    private static decimal CheckVessel(decimal vesselLitre) => Guard.Above(vesselLitre, 0m, 10_000m);

    private static decimal CheckPressure(decimal bar) => Guard.Within(bar, 0m, 10m);
}
