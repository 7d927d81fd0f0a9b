namespace Visits.Facts;

/// <summary>What is kept of the measurements of a visit, by name. A single member has the member's name.</summary>
public static class MeasuredNames
{
    /// <summary>CO/CO2 ratio at maximum rate after the work, dimensionless.</summary>
    public const string CoCo2Ratio = "coCo2Ratio";

    /// <summary>CO at maximum rate after the work, ppm.</summary>
    public const string CoPpm = "coPpm";

    /// <summary>CO2 at maximum rate after the work, %.</summary>
    public const string Co2Percent = "co2Percent";

    /// <summary>O2 at maximum rate after the work, %.</summary>
    public const string O2Percent = "o2Percent";

    /// <summary>Flue gas temperature at maximum rate after the work, degrees Celsius.</summary>
    public const string FlueTemperatureC = "flueTemperatureC";

    /// <summary>Flue gas temperature above the return temperature, at a stated load, kelvin.</summary>
    public const string FlueAboveReturnK = "flueAboveReturnK";

    /// <summary>Precharge of the expansion vessel, bar.</summary>
    public const string VesselPrechargeBar = "vesselPrechargeBar";

    /// <summary>Flame current, microamperes.</summary>
    public const string FlameCurrentMicroamps = "flameCurrentMicroamps";

    /// <summary>Standing pressure at the meter, mbar.</summary>
    public const string MeterStandingMbar = "meterStandingMbar";

    /// <summary>Operating pressure at the meter, mbar.</summary>
    public const string MeterOperatingMbar = "meterOperatingMbar";

    /// <summary>Pressure at the appliance inlet, mbar.</summary>
    public const string ApplianceInletMbar = "applianceInletMbar";

    /// <summary>Pressure at the burner, mbar.</summary>
    public const string BurnerMbar = "burnerMbar";
}
