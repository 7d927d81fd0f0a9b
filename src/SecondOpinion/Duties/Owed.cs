namespace SecondOpinion.Duties;

/// <summary>The kinds of duty, as the table of reasons names them.</summary>
internal enum DutyKind
{
    Identify,
    Competence,
    ExamineAfterWork,
    ProveGasPath,
    SealWhatIsLeft,
    ProveCombustionCircuit,
    ProveFlue,
    ServiceFireSide,
    FillTrap,
    WaterCondensateElectrics,
    RoomAir,
    SafetyDevices,
    LandlordRecord,
    Commission,
    HandleDanger,
    EscapeGasLeftOff,
    EscapeGasRestored,
    MadeKnown,
    LeftOff,
    NoAccess,
    ReturnAfterDeferral,
    AlarmWithoutFault,
    DangerElsewhere,
    TemporaryBond,
    AlarmOwed,
    TraceFigures,
    History,
}

/// <summary>What has become of a duty, the gravest last.</summary>
internal enum DutyState
{
    /// <summary>Done, and on record.</summary>
    Met,

    /// <summary>Put off until the boiler is used again.</summary>
    Deferred,

    /// <summary>Not done, for a reason that the table of reasons lets stand.</summary>
    ByReason,

    /// <summary>Looked at and found bad.</summary>
    Bad,

    /// <summary>The record says two things that cannot both be true.</summary>
    Contradicted,

    /// <summary>Not on record.</summary>
    Missing,
}

/// <summary>One member that a duty asks for.</summary>
/// <param name="Kind">The duty.</param>
/// <param name="Weight">How much it weighs on this visit.</param>
/// <param name="Pointer">JSON Pointer of what is asked for.</param>
/// <param name="State">What has become of it.</param>
/// <param name="Because">What of the record calls for it.</param>
/// <param name="HoldsIfBad">Whether it can still be cured before leaving, and so holds the job while it is bad.</param>
internal sealed record Owed(DutyKind Kind, DutyWeight Weight, string Pointer, DutyState State, string Because, bool HoldsIfBad = true)
{
    /// <summary>Does it stand in the way of closing?</summary>
    public bool Holds => Weight == DutyWeight.Must
        && (State is DutyState.Missing or DutyState.Contradicted || (State == DutyState.Bad && HoldsIfBad));
}

/// <summary>One duty of the visit with all that it asks for.</summary>
internal sealed record Duty(DutyKind Kind, DutyWeight Weight, DutyState State, IReadOnlyList<string> Because, IReadOnlyList<string> Asks)
{
    /// <summary>What is owed, duty by duty.</summary>
    public static IReadOnlyList<Duty> Of(IEnumerable<Owed> owed) =>
    [
        .. owed.GroupBy(one => (one.Kind, one.Weight)).OrderBy(group => group.Key).Select(group => new Duty(
            group.Key.Kind, group.Key.Weight, group.Max(one => one.State),
            [.. group.Select(one => one.Because).Distinct(StringComparer.Ordinal)],
            [.. group.Where(one => one.State > DutyState.ByReason).Select(one => one.Pointer).Distinct(StringComparer.Ordinal)])),
    ];
}
