using FluentValidation;

namespace ServiceRecords;

/// <summary>
/// Validates a whole record: every section, and what cannot be true together. What is merely improbable is a finding, not a fault.
/// </summary>
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
        RuleForEach(r => r.Instruments).Must((r, instrument) => !IsListedBefore(r.Instruments!, instrument))
            .WithErrorCode(FaultCodes.DuplicateItem).WithMessage("An instrument of this kind and serial number is listed already.");
    }

    private static bool IsFinished(ServiceRecord record) => record.FinishedAt.Text is not null;

    /// <summary>A day of grace, for the day may be written at another offset.</summary>
    private static bool IsAfterVisit(ServiceRecord record, DateOnly? day) => day > record.FinishedAt.Date.AddDays(1);

    /// <summary>One device may serve as several kinds (an analyser with a pressure gauge), hence the kind.</summary>
    private static bool IsListedBefore(IReadOnlyList<Instrument> instruments, Instrument? instrument) =>
        instrument?.SerialNumber is not null
        && instruments.TakeWhile(i => i != instrument).Any(i => i?.Kind == instrument.Kind && i?.SerialNumber == instrument.SerialNumber);
}
