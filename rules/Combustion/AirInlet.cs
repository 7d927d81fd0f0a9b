using Visits;

namespace Rules.Combustion;

/// <summary>What the air-inlet sample says of the flue readings.</summary>
internal static class AirInlet
{
    /// <summary>A recorded value at the air inlet is outside its limit. Open flues have no such sample.</summary>
    public static bool ProductsReachTheAirInlet(this Visit visit) =>
        visit.IsOpenFlued != true
        && visit.Record.Combustion?.AirInlet is { } inlet
        && ((inlet.O2Percent is { } o2 && !visit.Limits[LimitIds.AirInletO2].Allows(o2))
            || (inlet.Co2Percent is { } co2 && !visit.Limits[LimitIds.AirInletCo2].Allows(co2)));
}
