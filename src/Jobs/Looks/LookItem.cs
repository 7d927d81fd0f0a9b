using System.Text.Json.Serialization;
using Jobs.Summary;
using Wire;

namespace Jobs.Looks;

/// <summary>What made something worth a look.</summary>
[JsonConverter(typeof(WireEnumConverter<LookKind>))]
public enum LookKind
{
    /// <summary>Different appliances with the same flue readings to the last digit.</summary>
    SameReadings,

    /// <summary>One analyser in use at two places at the same time.</summary>
    AnalyserInTwoPlaces,

    /// <summary>A visit that is shorter than the work that it records.</summary>
    ShorterThanItsWork,

    /// <summary>Last digits of one engineer's readings with one instrument that are less even than the instrument's display.</summary>
    LastDigits,
}

/// <summary>Records that are worth a look, and why. No accusation: each of these has innocent causes.</summary>
public sealed record LookItem
{
    /// <summary>What made them so.</summary>
    public required LookKind Kind { get; init; }

    /// <summary>The same in one sentence.</summary>
    public required string WorthALook { get; init; }

    /// <summary>Chance of something as unlikely or more in honest records; to twelve decimals; absent where no chance is involved.</summary>
    public decimal? Chance { get; init; }

    /// <summary>The same over all tests: the lowest rate of false discoveries at which this is one (Benjamini and Hochberg).</summary>
    public decimal? AdjustedChance { get; init; }

    /// <summary>The engineer's licence number, where it is about one.</summary>
    public string? Engineer { get; init; }

    /// <summary>Serial number of the instrument, where it is about one.</summary>
    public string? Instrument { get; init; }

    /// <summary>The record's member whose values were tested, where it is about one.</summary>
    public string? Quantity { get; init; }

    /// <summary>How many records it is about.</summary>
    public required int RecordsTotal { get; init; }

    /// <summary>The first of them, at most 50.</summary>
    public required IReadOnlyList<LookRecord> Records { get; init; }
}

/// <summary>A record, by its stored evaluation.</summary>
public sealed record LookRecord
{
    /// <summary>Path of the stored evaluation; its record is under it.</summary>
    // Here its id; whoever answers puts the path in its place.
    public required string Evaluation { get; init; }

    /// <summary>The caller's id of the record.</summary>
    public required string RecordId { get; init; }

    /// <summary>When the visit ended, UTC.</summary>
    public required DateTimeOffset FinishedAt { get; init; }
}

/// <summary>Readings whose last digits were not tested, and why.</summary>
public sealed record LookRefusal
{
    /// <summary>The engineer's licence number.</summary>
    public required string Engineer { get; init; }

    /// <summary>Serial number of the instrument.</summary>
    public required string Instrument { get; init; }

    /// <summary>The record's member.</summary>
    public required string Quantity { get; init; }

    /// <summary>How many readings there are.</summary>
    public required int Readings { get; init; }

    /// <summary>Why: tooFew (fewer than 50), offDisplay (a reading that the display cannot show), tooNarrow (they span too few digits), tooNearZero.</summary>
    public required string Why { get; init; }
}

/// <summary>What in the stored records of a period is worth a look.</summary>
public sealed record LookReport
{
    /// <summary>First day.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last day.</summary>
    public required DateOnly To { get; init; }

    /// <summary>How many records were looked at.</summary>
    public required int Records { get; init; }

    /// <summary>How many tests of chance were made, over all of which the chances are adjusted.</summary>
    public required int Tests { get; init; }

    /// <summary>The rate of false discoveries that was allowed.</summary>
    public required decimal FalseDiscoveryRate { get; init; }

    /// <summary>What is worth a look: first what no chance explains, then the least likely.</summary>
    public required SummaryTable<LookItem> Items { get; init; }

    /// <summary>Where last digits were not tested.</summary>
    public required SummaryTable<LookRefusal> Refused { get; init; }

    /// <summary>What to keep in mind.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}
