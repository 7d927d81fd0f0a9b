using FluentValidation;

namespace ServiceRecords;

/// <summary>Maker's limits: the bounds of the CO2 band must not cross.</summary>
public sealed class MakerLimitsValidator : SectionValidator<MakerLimits>
{
    /// <summary>Makes the rules.</summary>
    public MakerLimitsValidator() => RuleFor(l => l.Co2PercentMin).Must((l, lowest) => !(lowest > l.Co2PercentMax))
        .WithErrorCode(FaultCodes.BoundsCrossed).WithMessage("The lowest CO2 lies above the highest.");
}

/// <summary>Instruments: a calibration is due after it was done.</summary>
public sealed class InstrumentValidator : SectionValidator<Instrument>
{
    /// <summary>Makes the rules.</summary>
    public InstrumentValidator() => RuleFor(i => i.CalibrationDueOn).Must((i, due) => !(due < i.CalibratedOn))
        .WithErrorCode(FaultCodes.OutOfOrder).WithMessage("The next calibration cannot be due before the last one.");
}

/// <summary>Gas rate: one volume in one unit.</summary>
public sealed class GasRateMeasurementValidator : SectionValidator<GasRateMeasurement>
{
    /// <summary>Makes the rules.</summary>
    public GasRateMeasurementValidator() => RuleFor(g => g.VolumeFt3).Must((g, cubicFeet) => cubicFeet is null || g.VolumeM3 is null)
        .WithErrorCode(FaultCodes.OneOnly).WithMessage("Give the volume in cubic metres or in cubic feet, not both.");
}

/// <summary>Reportable decisions: nothing is reported before it is known.</summary>
public sealed class ReportableDecisionValidator : SectionValidator<ReportableDecision>
{
    /// <summary>Makes the rules.</summary>
    public ReportableDecisionValidator() => RuleFor(d => d.ReportedOn).Must((d, reported) => !(reported < d.KnownOn))
        .WithErrorCode(FaultCodes.OutOfOrder).WithMessage("The defect cannot be reported before it was known.");
}

/// <summary>Defects: what a defect is about must be a place that a record can have, for a mistyped one would answer no finding.</summary>
public sealed class DefectValidator : SectionValidator<Defect>
{
    /// <summary>Makes the rules.</summary>
    public DefectValidator() => RuleFor(d => d.Subject).Must(subject => string.IsNullOrEmpty(subject) || RecordMembers.Find(subject) is not null)
        .WithErrorCode(FaultCodes.UnknownReference).WithMessage("The subject must be a JSON Pointer into the record, such as /disturbedJoints/0.");
}
