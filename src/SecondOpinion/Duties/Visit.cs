using Records;

namespace SecondOpinion.Duties;

/// <summary>When something can be looked at.</summary>
internal enum Seen
{
    /// <summary>On any visit.</summary>
    Always,

    /// <summary>Only while the boiler runs: put off where it is left off.</summary>
    Running,

    /// <summary>Part of the job itself: put off where the job was broken off and the boiler is left off.</summary>
    InTheJob,
}

/// <summary>One visit, and what its record decides about what it owes.</summary>
internal sealed class Visit
{
    private readonly Excuses _excuses;

    private readonly Lazy<IReadOnlyList<Shown>> _shown;

    public Visit(Case one)
    {
        One = one;
        _shown = new(() => [.. ShownDangers.Of(this).Distinct()]);
        Touched = new Touched(Record);
        _excuses = new Excuses(this);
    }

    public Case One { get; }

    public ServiceRecord Record => One.Record;

    public Pages Pages => One.Pages;

    public Touched Touched { get; }

    /// <summary>Dangers that the observations show.</summary>
    public IReadOnlyList<Shown> Shown => _shown.Value;

    public WorkResult? Result => Record.Work?.Result;

    public IReadOnlyList<Defect> Defects => Record.Defects ?? [];

    public IReadOnlyList<DisturbedJoint> Joints => Record.DisturbedJoints ?? [];

    public IReadOnlyList<FittedPart> Fitted => Record.PartsFitted ?? [];

    public bool IsInUse => Record.Appliance.StateOnLeaving is StateOnLeaving.InUse or null;

    public bool IsLeftOff => !IsInUse;

    /// <summary>The visit says that nothing was reached, and nothing on record speaks against it.</summary>
    public bool IsNothingReached => SaysNothingReached && !HasTraces;

    public bool SaysNothingReached => One.SaysNothingReached();

    /// <summary>Something that only somebody at the boiler can have done.</summary>
    public bool HasTraces => Record.Combustion?.Readings?.Count > 0 || Record.Combustion?.AirInlet is { O2Percent: not null } or { Co2Percent: not null }
        || Record.GasSupply is { ApplianceInletMbar: not null } or { BurnerMbar: not null } or { Rate: not null }
        || Fitted.Count > 0 || Joints.Count > 0 || Record.TightnessTests?.Count > 0 || Record.Work?.Touched?.Count > 0
        || Record.HeatExchanger is { Cleaned: true } or { TopPlateRemoved: true } or { Inspected: true }
        || Record.SafetyDevices?.Any(device => device.Tested == true) == true
        || Record.Flue is { SpillageTestPassed: not null } or { FlowTestPassed: not null } or { CaseSealChecked: true };

    /// <summary>The job was not finished, by its own word.</summary>
    public bool IsBrokenOff => Result is WorkResult.PartlyCarriedOut or WorkResult.GasOff or WorkResult.AwaitingParts or WorkResult.StoppedForDanger;

    /// <summary>What is dangerous, known once it was looked at; until then nothing is.</summary>
    public Situation Situation { get; set; } = new([]);

    /// <summary>There is a danger: nobody may fire the boiler.</summary>
    public bool MayNotBeFired => Situation.State is DangerState.Standing or DangerState.NotExcluded or DangerState.LeftByRefusal or DangerState.TakenOutOfUse;

    /// <summary>What has to be seen running waits until the boiler is used again.</summary>
    public bool IsRunningPutOff => MayNotBeFired || (IsLeftOff && (Record.Appliance.LeftOffBecause is not null || IsBrokenOff));

    /// <summary>What of the job was not begun waits as well.</summary>
    public bool IsJobPutOff => IsBrokenOff && (IsLeftOff || MayNotBeFired);

    public bool IsInstallation => Record.JobType == JobType.Commissioning;

    public bool IsService => Record.JobType == JobType.AnnualService;

    public bool IsRepair => Record.JobType == JobType.Repair;

    /// <summary>Only the meter or the pipes were worked on, not the boiler.</summary>
    public bool IsBesideTheBoiler => IsRepair && Record.Work?.Kind is WorkKind.Pipework or WorkKind.MeterWork
        && !Fitted.Any(part => part.Kind is not (PartKind.Pipework or PartKind.Meter or PartKind.Regulator or PartKind.WaterPart));

    public bool IsRemoval => Record.Work?.Kind == WorkKind.Removal;

    /// <summary>Let, or nobody says that it is not.</summary>
    public bool IsLet => Record.JobType == JobType.LandlordCheck || Record.Premises?.Use is PremisesUse.Rented or null;

    public bool IsLandlords => IsLet && Record.Appliance.OwnedByTenant != true;

    /// <summary>A landlord's check, by itself or with the service of a let boiler.</summary>
    public bool IsCheck => Record.JobType == JobType.LandlordCheck || (IsService && IsLandlords);

    /// <summary>New, or nobody says that it is not.</summary>
    public bool IsNew => IsInstallation || Record.Commissioning is not null;

    public bool IsOpenFlued => One.IsOpenFlued() != false;

    /// <summary>
    /// Slept in since before the Regulations, which lifts 36(11): not in a bath or shower room, not for a new boiler, not where products come
    /// into the room.
    /// </summary>
    public bool IsSleepingRoomExcepted => IsOpenFlued && !IsNew && !One.ProductsAreInRoom()
        && Record.Premises is { SleptInSinceBeforeRegulations: true, Room: not Room.Bathroom } and ({ RoomIsSleeping: true } or { Room: Room.Bedroom });

    public bool IsFanned => Record.Appliance.FlueType is FlueType.RoomSealedFanned or FlueType.OpenFluedFanned or null;

    public bool IsCondensing => Record.Appliance.Condensing != false;

    public bool IsSealedSystem => Record.Water?.SystemType != WaterSystemType.OpenVented;

    public bool HasPart(params ReadOnlySpan<PartKind> kinds)
    {
        foreach (var part in Fitted)
        {
            if (part.Kind is { } kind && kinds.Contains(kind))
                return true;
        }

        return false;
    }

    /// <summary>The plate or door that holds the burner was off.</summary>
    public bool IsTopPlateOff => Record.HeatExchanger is { TopPlateRemoved: true } or { Cleaned: true } || Joints.Any(joint => joint.Place == JointPlace.TopPlate)
        || HasPart(PartKind.Burner, PartKind.HeatExchanger);

    /// <summary>The chamber in which the gas burns was opened.</summary>
    public bool IsChamberOpened => IsTopPlateOff || Joints.Any(joint => joint.Place == JointPlace.BurnerDoor);

    /// <summary>What is set or opened so that only an analysis shows how it burns now.</summary>
    public bool IsAnalysisNecessary => IsChamberOpened || HasPart(PartKind.Fan, PartKind.GasValve, PartKind.Injector) || IsNew
        || Touched.Why(TouchedPart.CombustionCircuit).Contains("/combustion/readings", StringComparison.Ordinal)
        || (Touched.Has(TouchedPart.CombustionCircuit) && !IsOutsideTheChamber);

    /// <summary>An electrode or a seal outside the chamber, and nothing else of the fire side, is what the record shows.</summary>
    private bool IsOutsideTheChamber => HasPart(PartKind.Electrode, PartKind.CombustionSeal)
        || Joints.Any(joint => joint.Place is JointPlace.Electrode or JointPlace.Fan or JointPlace.FlueCollector);

    /// <summary>Work on the boiler that regulation 26(9) follows.</summary>
    public bool IsWorkedOn => (IsService || IsInstallation || (IsRepair && !Touched.IsNothing)) && !IsRemoval;

    public bool IsExaminationOwed => IsCheck || IsWorkedOn;

    /// <summary>A known, suspected or shown escape of gas, fumes in the room included.</summary>
    public bool IsEscape => Record.Escape is { Reported: true } or { GasIsolated: true } || Record.Work?.Kind == WorkKind.Escape
        || (IsNothingReached && Record.CoAlarm?.ActivatedSinceLastVisit == true);

    public Owed Must(DutyKind kind, string pointer, bool? good, string because, Seen seen = Seen.Always, bool holdsIfBad = true) =>
        Ask(kind, DutyWeight.Must, pointer, good, because, seen, holdsIfBad);

    public Owed Should(DutyKind kind, string pointer, bool? good, string because, Seen seen = Seen.Always) =>
        Ask(kind, DutyWeight.Should, pointer, good, because, seen, holdsIfBad: false);

    /// <summary>The same, for a member of which only the presence counts: what it says is judged elsewhere.</summary>
    public bool? Recorded(string pointer) => Pages.Has(pointer) ? true : null;

    /// <summary>Two things on record that cannot both be true.</summary>
    public static Owed Contradiction(DutyKind kind, string pointer, string because) => new(kind, DutyWeight.Must, pointer, DutyState.Contradicted, because);

    /// <summary>A reason stands beside what it says could not be done.</summary>
    public bool HasContradictedReason => _excuses.IsAnyContradicted;

    /// <summary>"The maker does not want it" without a word of where the maker says so.</summary>
    public bool LacksMakersSource => string.IsNullOrWhiteSpace(Record.MakerLimits?.Source)
        && Record.Work?.NotDone?.Any(said => said.Because == NotDoneReason.MakerSaysNotNeeded) == true;

    private Owed Ask(DutyKind kind, DutyWeight weight, string pointer, bool? good, string because, Seen seen, bool holdsIfBad)
    {
        var state = good switch
        {
            true => DutyState.Met,
            false => DutyState.Bad,
            null when (seen == Seen.Running && IsRunningPutOff) || (seen == Seen.InTheJob && IsJobPutOff) => DutyState.Deferred,
            null => _excuses.Of(kind, weight, pointer) ?? DutyState.Missing,
        };
        return new Owed(kind, weight, pointer, state, because, holdsIfBad);
    }
}
