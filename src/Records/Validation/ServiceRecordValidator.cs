using Records.Faults;
using Records.Members;

namespace Records.Validation;

/// <summary>
/// Validates a whole record: every section, and what cannot be true together. What is merely improbable is a finding, not a fault.
/// </summary>
public sealed class ServiceRecordValidator : SectionValidator<ServiceRecord>
{
    /// <summary>Makes the rules.</summary>
    public ServiceRecordValidator()
    {
        Demand(r => r.FinishedAt, r => !(IsFinished(r) && r.StartedAt?.Value > r.FinishedAt.Value),
            FaultCodes.OutOfOrder, "The visit cannot finish before it starts.");
        Demand(r => r.PreviousVisit!.FinishedAt, r => !(IsFinished(r) && r.PreviousVisit?.FinishedAt?.Value >= r.FinishedAt.Value),
            FaultCodes.OutOfOrder, "The previous visit must have finished before this one did.");
        Demand(r => r.Appliance.InstalledOn, r => !(IsFinished(r) && IsAfterVisit(r, r.Appliance?.InstalledOn)),
            FaultCodes.OutOfOrder, "The appliance cannot be installed after the visit.");
        Demand(r => r.Appliance.Fuel, r => r.Appliance?.Fuel is not null || MayLackFuel(r),
            FaultCodes.RequiredMember, $"{FaultTexts.Required(RecordMembers.At("/appliance/fuel"))} Only a visit without access, or one that was refused, can do without it, as long as nothing was measured, tested or fitted.");
        DemandOfEach(r => r.Instruments, (r, instrument) => !IsListedBefore(r.Instruments!, instrument),
            FaultCodes.DuplicateItem, "An instrument of this kind and serial number is listed already.");
    }

    /// <summary>Nobody got to see which gas it is, and nothing on record speaks against that. A record in pieces without its appliance is no such visit.</summary>
    private static bool MayLackFuel(ServiceRecord record) =>
        record is
        {
            Appliance: not null,
            Work.Result: WorkResult.NoAccess or WorkResult.Refused,
            Combustion: null or { Readings: null or { Count: 0 }, AirInlet: null or { O2Percent: null, Co2Percent: null } },
            GasSupply: null or { MeterStandingMbar: null, MeterOperatingMbar: null, ApplianceInletMbar: null, BurnerMbar: null, Rate: null },
            TightnessTests: null or { Count: 0 },
            PartsFitted: null or { Count: 0 },
        };

    private static bool IsFinished(ServiceRecord record) => record.FinishedAt.Text is not null;

    /// <summary>A day of grace, for the day may be written at another offset.</summary>
    private static bool IsAfterVisit(ServiceRecord record, DateOnly? day) => day?.DayNumber > record.FinishedAt.Date.DayNumber + 1;

    /// <summary>One device may serve as several kinds (an analyser with a pressure gauge), hence the kind.</summary>
    private static bool IsListedBefore(IReadOnlyList<Instrument> instruments, Instrument? instrument) =>
        instrument?.SerialNumber is not null
        && instruments.TakeWhile(i => i != instrument).Any(i => i?.Kind == instrument.Kind && i?.SerialNumber == instrument.SerialNumber);
}
