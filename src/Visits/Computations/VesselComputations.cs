using Calculations;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>The expansion vessel of a sealed system. Pressures are gauge; the atmosphere is taken as 1 bar.</summary>
public static class VesselComputations
{
    private const string Standard = "form of EN 12828 annex D, from memory";

    // Nearer than any gauge can tell; between equal pressures a vessel takes nothing.
    private const decimal Least = 0.01m;

    private static readonly ComputationInput Height = Within("staticHeadM", "m", 0, 200, 5, "height of the highest point above the vessel");
    private static readonly ComputationInput MaxFlow = Above("highestFlowC", "Cel", 10, 110, 80, "highest flow temperature");
    private static readonly ComputationInput System = Above("systemVolumeL", "L", 0, 100_000, 60, "water content of the system");
    private static readonly ComputationInput Vessel = Above("vesselVolumeL", "L", 0, 10_000, 12, "volume of the vessel");
    private static readonly ComputationInput Precharge = Within("vesselPrechargeBar", "bar", 0, 10, 1, "precharge");
    private static readonly ComputationInput Fill = Within("coldFillBar", "bar", 0, 10, 1.2m, "cold fill pressure");
    private static readonly ComputationInput Relief = Within("reliefSettingBar", "bar", 1, 10, 3, "relief valve setting");
    private static readonly ComputationInput Margin = Within("reliefMarginPercent", "%", 0, 50, 10, "margin below the relief setting");

    /// <summary>Static head.</summary>
    public static readonly Computation StaticHead = new()
    {
        Name = "staticHead",
        What = "pressure of the cold water above the vessel",
        Inputs = [Height],
        Unit = "bar",
        Template = "{staticHeadM} x 0.0980665",
        Source = "1000 kg/m3 x 9.80665 m/s2",
        Exact = v => ExpansionVessel.StaticHeadBar(v.Exact("staticHeadM")),
    };

    /// <summary>Expansion of the system water.</summary>
    public static readonly Computation Expansion = new()
    {
        Name = "waterExpansion",
        What = "volume by which the system water grows from 10 Cel to the highest flow temperature",
        Inputs = [System, MaxFlow],
        Unit = "L",
        Template = "{systemVolumeL} x (density at 10 Cel / density at {highestFlowC} Cel - 1)",
        Source = "density of water by Kell (1975)",
        Exact = ExpansionLitre,
    };

    /// <summary>Vessel volume needed, trade form.</summary>
    public static readonly Computation VolumeNeeded = new()
    {
        Name = "vesselVolumeNeeded",
        What = "vessel volume needed by the trade form, which takes the precharge to equal the cold fill",
        Inputs = [System, MaxFlow, Fill, Relief, Margin],
        Unit = "L",
        Template = "expansion of {systemVolumeL} L from 10 to {highestFlowC} Cel / (1 - ({coldFillBar} + 1) / ({reliefSettingBar} x (1 - {reliefMarginPercent} / 100) + 1))",
        Source = "common practice; Boyle's law",
        Demands = [("coldFillBar", "must lie at least 0.01 bar below the relief setting less its margin", v => v.Exact("coldFillBar") + Least <= Final(v)), SomethingExpands],
        Exact = v => ExpansionVessel.TradeVolumeLitre(ExpansionVessel.ExpansionFromTenC(v.Exact("highestFlowC")), v.Exact("systemVolumeL"), v.Exact("coldFillBar"), Final(v)),
    };

    /// <summary>Vessel volume needed, with reserve.</summary>
    public static readonly Computation VolumeWithReserve = new()
    {
        Name = "vesselVolumeWithReserve",
        What = "vessel volume needed for expansion and water reserve, up to 0.5 bar (above 5 bar: 10 %) below the relief setting",
        Inputs = [System, MaxFlow, Precharge, Relief],
        Unit = "L",
        Template = "(expansion of {systemVolumeL} L from 10 to {highestFlowC} Cel + the larger of 3 L and 0.5 %) x (pe + 1) / (pe - {vesselPrechargeBar}), pe below the relief setting of {reliefSettingBar}",
        Source = Standard,
        Demands =
        [
            ("vesselPrechargeBar", "must lie at least 0.01 bar below the highest working pressure", v => v.Exact("vesselPrechargeBar") + Least <= ExpansionVessel.HighestWorkingBar(v.Exact("reliefSettingBar"))),
            SomethingExpands,
        ],
        Exact = v => ExpansionVessel.VolumeWithReserveLitre(
            ExpansionLitre(v), ExpansionVessel.ReserveLitre(v.Exact("systemVolumeL")), v.Exact("vesselPrechargeBar"), ExpansionVessel.HighestWorkingBar(v.Exact("reliefSettingBar"))),
    };

    /// <summary>Water that the vessel takes.</summary>
    public static readonly Computation Acceptance = new()
    {
        Name = "vesselAcceptance",
        What = "water that the vessel takes between cold fill and the relief setting less its margin",
        Inputs = [Vessel, Precharge, Fill, Relief, Margin],
        Unit = "L",
        Template = "{vesselVolumeL} x ({vesselPrechargeBar} + 1) / (pa + 1) x (pe - pa) / (pe + 1), pa the larger of precharge and fill ({coldFillBar}), pe = {reliefSettingBar} x (1 - {reliefMarginPercent} / 100)",
        Source = "Boyle's law",
        Demands = [("coldFillBar", "and precharge must lie at least 0.01 bar below the relief setting less its margin", v => Math.Max(v.Exact("vesselPrechargeBar"), v.Exact("coldFillBar")) + Least <= Final(v))],
        Exact = v => ExpansionVessel.AcceptanceLitre(v.Exact("vesselVolumeL"), v.Exact("vesselPrechargeBar"), v.Exact("coldFillBar"), Final(v)),
    };

    /// <summary>Pressure when hot.</summary>
    public static readonly Computation FinalPressure = new()
    {
        Name = "finalPressure",
        What = "pressure to which the system rises when hot",
        Inputs = [Vessel, Precharge, Fill, System, MaxFlow],
        Unit = "bar",
        Template = "(pa + 1) x Vg / (Vg - expansion of {systemVolumeL} L from 10 to {highestFlowC} Cel) - 1, Vg = {vesselVolumeL} x ({vesselPrechargeBar} + 1) / (pa + 1), pa the larger of precharge and fill ({coldFillBar})",
        Source = "Boyle's law",
        Demands = [("vesselVolumeL", "is too small: the expansion would leave less than a hundredth of the gas", v => ExpansionLitre(v) <= 0.99m * GasWhenCold(v))],
        Exact = v => ExpansionVessel.FinalBar(v.Exact("vesselVolumeL"), v.Exact("vesselPrechargeBar"), v.Exact("coldFillBar"), ExpansionLitre(v)),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } = [StaticHead, Expansion, VolumeNeeded, VolumeWithReserve, Acceptance, FinalPressure];

    private static (string, string, Func<InputValues, bool>) SomethingExpands =>
        ("highestFlowC", "is so little above 10 Cel that nothing expands", v => ExpansionLitre(v) > 0);

    private static decimal Final(InputValues v) => v.Exact("reliefSettingBar") * (100m - v.Exact("reliefMarginPercent")) / 100m;

    private static decimal ExpansionLitre(InputValues v) => v.Exact("systemVolumeL") * ExpansionVessel.ExpansionFromTenC(v.Exact("highestFlowC"));

    private static decimal GasWhenCold(InputValues v) =>
        v.Exact("vesselVolumeL") * (v.Exact("vesselPrechargeBar") + 1) / (Math.Max(v.Exact("vesselPrechargeBar"), v.Exact("coldFillBar")) + 1);
}
