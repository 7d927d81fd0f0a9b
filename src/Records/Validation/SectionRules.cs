using Records.Faults;
using Records.Members;

namespace Records.Validation;

/// <summary>Maker's limits: the bounds of a band must not cross.</summary>
public sealed class MakerLimitsValidator : SectionValidator<MakerLimits>
{
    /// <summary>Makes the rules.</summary>
    public MakerLimitsValidator()
    {
        Demand(l => l.Co2PercentMin, l => !(l.Co2PercentMin > l.Co2PercentMax),
            FaultCodes.BoundsCrossed, "The lowest CO2 lies above the highest.");
        Demand(l => l.ElectrodeGapMmMin, l => !(l.ElectrodeGapMmMin > l.ElectrodeGapMmMax),
            FaultCodes.BoundsCrossed, "The smallest electrode gap is wider than the largest.");
    }
}

/// <summary>Instruments: a calibration is due after it was done.</summary>
public sealed class InstrumentValidator : SectionValidator<Instrument>
{
    /// <summary>Makes the rules.</summary>
    public InstrumentValidator() => Demand(i => i.CalibrationDueOn, i => !(i.CalibrationDueOn < i.CalibratedOn),
        FaultCodes.OutOfOrder, "The next calibration cannot be due before the last one.");
}

/// <summary>Gas rate: one volume in one unit.</summary>
public sealed class GasRateMeasurementValidator : SectionValidator<GasRateMeasurement>
{
    /// <summary>Makes the rules.</summary>
    public GasRateMeasurementValidator() => Demand(g => g.VolumeFt3, g => g.VolumeFt3 is null || g.VolumeM3 is null,
        FaultCodes.OneOnly, "Give the volume in cubic metres or in cubic feet, not both.");
}

/// <summary>Reportable decisions: nothing is reported before it is known.</summary>
public sealed class ReportableDecisionValidator : SectionValidator<ReportableDecision>
{
    /// <summary>Makes the rules.</summary>
    public ReportableDecisionValidator() => Demand(d => d.ReportedOn, d => !(d.ReportedOn < d.KnownOn),
        FaultCodes.OutOfOrder, "The defect cannot be reported before it was known.");
}

/// <summary>
/// Defects: what a defect is about must be a place that a record can have, for a mistyped one would answer no finding; and nothing is examined
/// again before it was found.
/// </summary>
public sealed class DefectValidator : SectionValidator<Defect>
{
    /// <summary>Makes the rules.</summary>
    public DefectValidator()
    {
        Demand(d => d.Subject, d => string.IsNullOrEmpty(d.Subject) || RecordMembers.Find(d.Subject) is not null,
            FaultCodes.UnknownReference, "The subject must be a JSON Pointer into the record, such as /disturbedJoints/0.");
        Demand(d => d.ReexaminedAt, d => !(d.ReexaminedAt?.Value < d.FoundAt?.Value),
            FaultCodes.OutOfOrder, "The defect cannot be examined again before it was found.");
    }
}

/// <summary>What was not done: a reason must lead to a member that a record can have, for a mistyped pointer would give a reason for nothing.</summary>
public sealed class NotDoneValidator : SectionValidator<NotDone>
{
    /// <summary>Makes the rules.</summary>
    public NotDoneValidator() => Demand(n => n.What, n => n.What is null || RecordMembers.IsPlace(n.What),
        FaultCodes.UnknownReference, "It must be a JSON Pointer to a member of the record, such as /gasSupply/rate.");
}

/// <summary>Values taken back: each must be of a member that a record can have.</summary>
public sealed class WithdrawnValueValidator : SectionValidator<WithdrawnValue>
{
    /// <summary>Makes the rules.</summary>
    public WithdrawnValueValidator() => Demand(w => w.What, w => w.What is null || RecordMembers.IsPlace(w.What),
        FaultCodes.UnknownReference, "It must be a JSON Pointer to a member of the record, such as /combustion/readings/0/coPpm.");
}
