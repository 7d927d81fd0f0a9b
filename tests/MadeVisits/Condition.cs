namespace MadeVisits;

/// <summary>The true condition of a boiler and its installation at one moment.</summary>
public sealed record Condition
{
    /// <summary>Carbon monoxide in the flue gas at maximum and minimum rate, ppm, dry.</summary>
    public required decimal CoPpmMaximum { get; init; }

    public required decimal CoPpmMinimum { get; init; }

    /// <summary>Carbon dioxide in the flue gas, %, dry.</summary>
    public required decimal Co2PercentMaximum { get; init; }

    public required decimal Co2PercentMinimum { get; init; }

    /// <summary>Of the flue gas at maximum rate, degrees Celsius.</summary>
    public required decimal FlueTemperatureC { get; init; }

    public bool IsFlueSound { get; init; } = true;

    /// <summary>Distance from the terminal to the nearest opening, mm.</summary>
    public required decimal TerminalMm { get; init; }

    public bool Spills { get; init; }

    public bool IsCaseTight { get; init; } = true;

    /// <summary>Carbon dioxide in the air inlet, %.</summary>
    public decimal InletCo2Percent { get; init; }

    /// <summary>Drop of the installation in a tightness test of two minutes, mbar.</summary>
    public decimal DropMbar { get; init; }

    /// <summary>Whether what leaks stands above the appliance valve.</summary>
    public bool LeaksAboveValve { get; init; }

    /// <summary>Highest carbon monoxide in the room while the boiler runs, ppm.</summary>
    public decimal RoomCoPpm { get; init; }

    public bool IsVentBlocked { get; init; }

    public bool FlameSupervisionWorks { get; init; } = true;

    /// <summary>Resistance from the boiler to the main earth, ohm.</summary>
    public required decimal EarthOhm { get; init; }

    public string ReliefValve { get; init; } = "ok";

    /// <summary>none, light or heavy.</summary>
    public required string Deposits { get; init; }

    /// <summary>Operating pressure at the appliance inlet, mbar.</summary>
    public required decimal InletMbar { get; init; }

    /// <summary>Heat input as a share of the plate's.</summary>
    public required decimal InputShare { get; init; }

    /// <summary>Pre-charge of the expansion vessel, bar.</summary>
    public required decimal PrechargeBar { get; init; }
}
