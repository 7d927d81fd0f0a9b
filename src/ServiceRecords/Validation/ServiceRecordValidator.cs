using FluentValidation;

namespace ServiceRecords;

/// <summary>Validates a whole record: every section, and what no visit can contradict. What is merely improbable is a finding, not a fault.</summary>
public sealed class ServiceRecordValidator : SectionValidator<ServiceRecord>
{
    /// <summary>Makes the rules.</summary>
    public ServiceRecordValidator()
    {
        RuleFor(r => r.FinishedAt).Must((r, finish) => !(r.StartedAt?.Value > finish.Value)).When(IsFinished)
            .WithErrorCode(FaultCodes.OutOfOrder).WithMessage("The visit cannot finish before it starts.");
        RuleFor(r => r.PreviousVisit!.FinishedAt).Must((r, previous) => !(previous?.Value >= r.FinishedAt.Value))
            .When(r => IsFinished(r) && r.PreviousVisit is not null)
            .WithErrorCode(FaultCodes.OutOfOrder).WithMessage("The previous visit must have finished before this one did.");
        RuleFor(r => r.Appliance.InstalledOn).Must((r, day) => !IsAfterVisit(r, day)).When(r => IsFinished(r) && r.Appliance is not null)
            .WithErrorCode(FaultCodes.OutOfOrder).WithMessage("The appliance cannot be installed after the visit.");
        AddPlaces(r => Places("TightnessTests", r.TightnessTests, "TestedOn", test => IsFinished(r) && IsAfterVisit(r, test.TestedOn)),
            FaultCodes.OutOfOrder, "The test cannot be made after the visit.");
        AddPlaces(r => Places("Combustion.Readings", r.Combustion?.Readings, "TakenAt", reading => IsFinished(r) && IsAfterVisit(r, reading.TakenAt?.Date)),
            FaultCodes.OutOfOrder, "The reading cannot be taken after the visit.");
        AddPlaces(r => Places("Combustion.Readings", r.Combustion?.Readings, "Instrument", reading => IsUnlisted(r, reading.Instrument)),
            FaultCodes.UnknownReference, "No listed instrument has this serial number.");
        AddPlaces(r => Places("Instruments", r.Instruments, "SerialNumber", instrument => IsListedBefore(r.Instruments!, instrument)),
            FaultCodes.DuplicateItem, "An instrument of this kind and serial number is listed already.");
    }

    private static bool IsFinished(ServiceRecord record) => record.FinishedAt.Text is not null;

    /// <summary>A day of grace, for the day may be written at another offset.</summary>
    private static bool IsAfterVisit(ServiceRecord record, DateOnly? day) => day > record.FinishedAt.Date.AddDays(1);

    /// <summary>While an instrument's own serial number is not known, the reading may well mean that one.</summary>
    private static bool IsUnlisted(ServiceRecord record, string? serialNumber) =>
        serialNumber is not null && record.Instruments is { } listed && listed.All(i => i?.SerialNumber is { } s && !string.Equals(s, serialNumber, StringComparison.Ordinal));

    /// <summary>One device may serve as several kinds (an analyser with a pressure gauge), hence the kind.</summary>
    private static bool IsListedBefore(IReadOnlyList<Instrument> instruments, Instrument instrument) =>
        instrument.SerialNumber is not null && instruments.TakeWhile(i => i != instrument)
            .Any(i => i?.Kind == instrument.Kind && string.Equals(i?.SerialNumber, instrument.SerialNumber, StringComparison.Ordinal));

    private static IEnumerable<string> Places<TItem>(string list, IReadOnlyList<TItem>? items, string member, Func<TItem, bool> isAtFault) =>
        (items ?? []).Index().Where(i => i.Item is not null && isAtFault(i.Item)).Select(i => $"{list}[{i.Index}].{member}");
}
