namespace MadeVisits;

/// <summary>How an engineer works.</summary>
public enum Habit
{
    /// <summary>Looks at everything that the job calls for, and writes it down.</summary>
    Thorough,

    /// <summary>Leaves out what good practice asks for and the law does not, and now and then more.</summary>
    Hurried,

    /// <summary>Looks at everything and forgets to write some of it.</summary>
    Forgetful,

    /// <summary>Works as the hurried one, and writes what closes the job.</summary>
    Dishonest,
}

/// <summary>What can be examined on a visit.</summary>
public enum Aspect
{
    /// <summary>Flue by eye: route, joints, supports.</summary>
    Flue,

    /// <summary>Flow and spillage of an open flue.</summary>
    FlueFlow,

    /// <summary>Seal of the case of a room-sealed boiler.</summary>
    Case,

    /// <summary>Air inlet of a room-sealed boiler, by the analyser.</summary>
    AirInlet,

    /// <summary>Distances of the terminal.</summary>
    Terminal,

    /// <summary>Flue gas analysis.</summary>
    Combustion,

    /// <summary>Tightness of the gas installation.</summary>
    Tightness,

    /// <summary>Operating pressure.</summary>
    Pressure,

    /// <summary>Heat input by the meter.</summary>
    Rate,

    /// <summary>Carbon monoxide in the room.</summary>
    RoomAir,

    /// <summary>Vents and air inlet by eye.</summary>
    Ventilation,

    /// <summary>Safety devices, made to act.</summary>
    SafetyDevices,

    /// <summary>Earth, polarity, fuse.</summary>
    Electrics,

    /// <summary>Water side.</summary>
    Water,

    /// <summary>Heat exchanger and burner, opened.</summary>
    FireSide,

    /// <summary>Trap and condensate pipe.</summary>
    Condensate,

    /// <summary>Gas pipework by eye.</summary>
    Pipework,

    /// <summary>Carbon monoxide alarm.</summary>
    Alarm,
}

/// <summary>A boiler as its plate and its place show it. Makers and models are invented.</summary>
public sealed record Boiler
{
    public required string SerialNumber { get; init; }

    public required string Maker { get; init; }

    public required string Model { get; init; }

    public required string Kind { get; init; }

    public required string Fuel { get; init; }

    public required string FlueType { get; init; }

    /// <summary>Of the case against the room, where a fan makes one; null elsewhere.</summary>
    public string? CasePressure { get; init; }

    public required string BurnerKind { get; init; }

    public required bool IsCondensing { get; init; }

    public required string ExchangerMaterial { get; init; }

    public required decimal NetInputKw { get; init; }

    public required DateOnly InstalledOn { get; init; }

    public required string Room { get; init; }

    public required bool IsOpenVented { get; init; }

    public bool IsRoomSealed => FlueType.StartsWith("roomSealed", StringComparison.Ordinal);
}

/// <summary>The premises and whose law they are under.</summary>
public sealed record Premises(string Reference, string Jurisdiction, string Use)
{
    public bool IsLet => Use == "rented";
}

/// <summary>Who comes.</summary>
public sealed record Engineer(string LicenceNumber, string BusinessNumber, Habit Habit);

/// <summary>An instrument: how far it may be wrong, and whether it was calibrated.</summary>
/// <param name="Kind">As records name it.</param>
/// <param name="SerialNumber">Its number.</param>
/// <param name="CalibratedOn">The day of its certificate.</param>
/// <param name="Bias">The share by which it reads too high (below 0: too low), the same all day.</param>
public sealed record Instrument(string Kind, string SerialNumber, DateOnly CalibratedOn, decimal Bias)
{
    public DateOnly DueOn => CalibratedOn.AddYears(1);
}

/// <summary>Everything around one visit that is so, whatever anybody writes.</summary>
public sealed record World(Boiler Boiler, Premises Premises, Engineer Engineer, IReadOnlyList<Instrument> Instruments);
