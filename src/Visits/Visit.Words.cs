using Calculations;
using Kernel;
using Records;

namespace Visits;

/// <content>The trade's words for what the record says.</content>
public sealed partial class Visit
{
    /// <summary>The appliance.</summary>
    public Appliance Appliance => Record.Appliance;

    /// <summary>An annual service.</summary>
    public bool IsAnnualService => Record.JobType == JobType.AnnualService;

    /// <summary>Service items are looked for: any visit but a bare landlord check.</summary>
    public bool IsMoreThanALandlordCheck => Record.JobType != JobType.LandlordCheck;

    /// <summary>A new or replaced boiler was fitted at this visit. A plain service has none; a visit that records a commissioning has to say.</summary>
    public bool? FittedANewBoiler =>
        Record.Commissioning?.NewBoiler ?? (Record.JobType == JobType.Commissioning || Record.Commissioning is not null ? null : false);

    /// <summary>The boiler is new or a replacement. One whose installation an earlier visit broke off may be so still, and the record has to say.</summary>
    public bool? IsNewBoiler => Record.Commissioning?.NewBoiler is null && IsOwedFromBefore(Commission) ? null : FittedANewBoiler;

    // The part of the duties that a new boiler owes, as rules/Part.cs names it.
    private const string Commission = "commission";

    /// <summary>Rented premises, or a landlord check.</summary>
    public bool? IsLet => Record.JobType == JobType.LandlordCheck ? true : Record.Premises?.Use switch
    {
        PremisesUse.Rented => true,
        null => null,
        _ => false,
    };

    /// <summary>The landlord's duties of regulation 36 apply: the premises are let, and the appliance is not the tenant's own.</summary>
    public bool? IsUnderLandlordDuty => Appliance.OwnedByTenant == true ? false : IsLet;

    /// <summary>The law of <paramref name="jurisdiction"/> applies.</summary>
    public bool IsIn(string jurisdiction) => Record.Jurisdiction == jurisdiction;

    /// <summary>Somebody lives there.</summary>
    public bool? IsAHome => Record.Premises?.Use switch
    {
        null => null,
        PremisesUse.Workplace => false,
        _ => true,
    };

    /// <summary>Takes its combustion air from the room.</summary>
    public bool? IsOpenFlued => Appliance.FlueType switch
    {
        FlueType.OpenFlued or FlueType.OpenFluedFanned => true,
        null => null,
        _ => false,
    };

    /// <summary>Closed to the room.</summary>
    public bool? IsRoomSealed => !IsOpenFlued;

    /// <summary>A fan drives the products through the flue.</summary>
    public bool? IsFanned => Appliance.FlueType switch
    {
        FlueType.RoomSealedFanned or FlueType.OpenFluedFanned => true,
        null => null,
        _ => false,
    };

    /// <summary>Rated heat input (net), kW; null while the plate's figure or its basis is not recorded, or the fuel by which a gross one is turned into net.</summary>
    public decimal? RatedInputNetKw => (Appliance.RatedInputKw, Appliance.RatedInputBasis) switch
    {
        ({ } net, InputBasis.Net) => net,
        ({ } gross, InputBasis.Gross) when Appliance.Fuel is not null => HeatInput.NetKw(gross, GasFamily),
        _ => null,
    };

    /// <summary>The gas that it burns. A rule that reads it of a record that does not name it asks for it and says nothing else.</summary>
    /// <exception cref="FuelNeededException">The record does not name it.</exception>
    public Fuel Fuel => Appliance.Fuel ?? throw new FuelNeededException();

    /// <summary>Burns natural gas.</summary>
    /// <exception cref="FuelNeededException">The record does not name the fuel.</exception>
    public bool BurnsNaturalGas => Fuel == Fuel.NaturalGas;

    /// <summary>Gas family for computations.</summary>
    /// <exception cref="FuelNeededException">The record does not name the fuel.</exception>
    public GasFamily GasFamily => Fuel switch
    {
        Fuel.NaturalGas => GasFamily.NaturalGas,
        Fuel.Propane => GasFamily.Propane,
        Fuel.Butane => GasFamily.Butane,
        var unknown => throw new InvalidOperationException($"{unknown} is no fuel."),
    };

    /// <summary>Heat input (gross) from the timed meter, kW; null while the measurement is not complete or no boiler could have it.</summary>
    public decimal? MeasuredGrossKw =>
        Record.GasSupply?.Rate is { Seconds: > 0 and { } seconds, CalorificValueMjPerM3: >= 10 and <= 150 and { } calorificValue } rate
        && (rate.VolumeM3 ?? rate.VolumeFt3 * GasRate.M3PerFt3) is > 0 and <= 100 and { } volume
        && HeatInput.MetricRateM3PerHour(volume, seconds) is <= 2000 and var perHour
            ? HeatInput.GrossKw(perHour, calorificValue)
            : null;

    /// <summary>Nobody can use the appliance as the engineer left it.</summary>
    public bool IsLeftOutOfUse => Appliance.StateOnLeaving is StateOnLeaving.TurnedOff or StateOnLeaving.Disconnected;

    /// <summary>Every reading; null when the record carries none.</summary>
    public IReadOnlyList<Subject<CombustionReading>>? Readings => field ??= Subjects.Of("/combustion/readings", Record.Combustion?.Readings);

    /// <summary>The readings that can pass: taken after the work. A reading that does not say when is among them and is asked.</summary>
    public IReadOnlyList<Subject<CombustionReading>>? ReadingsAfterWork => field ??= Readings?.Where(reading => reading.Value.Stage != WorkStage.BeforeWork).ToList();

    /// <summary>Joints disturbed in the work; null when the record does not say, empty when it states none.</summary>
    public IReadOnlyList<Subject<DisturbedJoint>>? DisturbedJoints => field ??= Subjects.Of("/disturbedJoints", Record.DisturbedJoints);

    /// <summary>Those of them that carry gas.</summary>
    public IReadOnlyList<Subject<DisturbedJoint>>? DisturbedGasJoints => field ??= DisturbedJoints?.Where(joint => joint.Value.CarriesGasOrMay()).ToList();

    /// <summary>A joint that carries gas was disturbed.</summary>
    public bool? GasJointsWereDisturbed => DisturbedGasJoints?.Any();

    /// <summary>Every tightness test; null when the record does not say, empty when it states none.</summary>
    public IReadOnlyList<Subject<TightnessTest>>? TightnessTests => field ??= Subjects.Of("/tightnessTests", Record.TightnessTests);

    /// <summary>Tightness tests made after the work. A test that does not say when is among them and is asked.</summary>
    public IReadOnlyList<Subject<TightnessTest>>? TestsAfterWork =>
        field ??= TightnessTests?.Where(test => test.Value.Stage != WorkStage.BeforeWork).ToList();

    /// <summary>Defects that the engineer recorded.</summary>
    public IReadOnlyList<Subject<Defect>>? Defects => field ??= Subjects.Of("/defects", Record.Defects);

    /// <summary>The same as facts of the inference; empty where none is recorded.</summary>
    public IReadOnlyList<RecordedDefect> RecordedDefects => field ??= [.. (Defects ?? []).Select(defect => new RecordedDefect(defect.Pointer, defect.Value))];

    /// <summary>Instruments used.</summary>
    public IReadOnlyList<Subject<Instrument>>? Instruments => field ??= Subjects.Of("/instruments", Record.Instruments);

    /// <summary>Safety devices.</summary>
    public IReadOnlyList<Subject<SafetyDevice>>? SafetyDevices => field ??= Subjects.Of("/safetyDevices", Record.SafetyDevices);
}
