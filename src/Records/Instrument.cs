using Records.Metadata;

namespace Records;

/// <summary>One measuring instrument and its calibration.</summary>
public sealed class Instrument
{
    /// <summary>What it measures.</summary>
    [Class(MemberClass.Identity)]
    [Ask("What kind of instrument is it?", While.Paper)]
    public InstrumentKind? Kind { get; init; }

    /// <summary>Its serial number; readings name it.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("What is the serial number of the instrument?", While.Paper)]
    public string? SerialNumber { get; init; }

    /// <summary>Day of the last calibration.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day was the instrument last calibrated?", While.Paper)]
    public DateOnly? CalibratedOn { get; init; }

    /// <summary>Day by which it must be calibrated again.</summary>
    [Class(MemberClass.Time)]
    [Ask("By which day is the next calibration due?", While.Paper)]
    public DateOnly? CalibrationDueOn { get; init; }

    /// <summary>Standard to which the instrument is made.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("To which standard is the instrument made?", While.Paper)]
    public string? Standard { get; init; }

    /// <summary>Smallest step shown, in the unit of its main reading (mbar for a pressure gauge).</summary>
    [Quantity("{reading}", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the smallest step the instrument shows, in the unit of its reading?", While.Paper)]
    public decimal? Resolution { get; init; }

    /// <summary>Stated accuracy for each quantity.</summary>
    [Items(50)]
    [Class(MemberClass.Evidence)]
    [Ask("What accuracy does the instrument's certificate state?", While.Paper)]
    public IReadOnlyList<InstrumentAccuracy>? Accuracies { get; init; }
}
