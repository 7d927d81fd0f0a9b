using Records.Metadata;

namespace Records;

/// <summary>Stated accuracy of one quantity: the larger of the absolute and the relative part.</summary>
public sealed class InstrumentAccuracy
{
    /// <summary>The member it applies to, by its name in this record, such as coPpm.</summary>
    [Text(50)]
    [Class(MemberClass.Identity)]
    [Ask("To which reading does the accuracy apply?", While.Paper)]
    public string? Quantity { get; init; }

    /// <summary>Plus or minus, in the unit of the quantity.</summary>
    [Quantity("{reading}", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the absolute accuracy, in the unit of the reading?", While.Paper)]
    public decimal? Absolute { get; init; }

    /// <summary>Plus or minus, in per cent of the reading.</summary>
    [Quantity("%", 0, 1000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the relative accuracy in % of the reading?", While.Paper)]
    public decimal? RelativePercent { get; init; }

    /// <summary>Smallest step shown, in the unit of the quantity.</summary>
    [Quantity("{reading}", 0, 1_000_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the smallest step shown, in the unit of the reading?", While.Paper)]
    public decimal? Resolution { get; init; }
}
