using System.Text.Json.Serialization;
using Wire;

namespace Findings;

/// <summary>What can fall due.</summary>
[JsonConverter(typeof(WireEnumConverter<DueKind>))]
public enum DueKind
{
    /// <summary>The next service of an appliance.</summary>
    AnnualService,

    /// <summary>The landlord's next gas safety check of an appliance.</summary>
    LandlordCheck,

    /// <summary>The next calibration of an instrument.</summary>
    Calibration,

    /// <summary>The end of an engineer's category of work.</summary>
    EngineerCategory,

    /// <summary>The replacement of a carbon monoxide alarm.</summary>
    CoAlarmReplacement,

    /// <summary>The next dose of inhibitor.</summary>
    InhibitorDose,

    /// <summary>What was left or put off when the appliance was last left: due before it is used again, so from the day of that visit.</summary>
    BeforeUse,
}

/// <summary>One thing that falls due, by what the latest record on it says.</summary>
public sealed record DueDate
{
    /// <summary>What falls due.</summary>
    public required DueKind Kind { get; init; }

    /// <summary>The last day for it.</summary>
    public required DateOnly By { get; init; }

    /// <summary>Of a landlord's check: the first day on which it counts as made on the last day (regulation 36A).</summary>
    public DateOnly? WindowFrom { get; init; }

    /// <summary>By what rule the day is reckoned.</summary>
    public required string Basis { get; init; }

    /// <summary>Serial number of the appliance, or of the instrument.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>Maker of the appliance.</summary>
    public string? Maker { get; init; }

    /// <summary>Model of the appliance.</summary>
    public string? Model { get; init; }

    /// <summary>The caller's own reference of the premises.</summary>
    public string? PremisesReference { get; init; }

    /// <summary>Kind of the instrument, as the record names it.</summary>
    public string? Instrument { get; init; }

    /// <summary>Licence number of the engineer.</summary>
    public string? LicenceNumber { get; init; }

    /// <summary>The engineer's category: fuel and scope.</summary>
    public string? Category { get; init; }

    /// <summary>Nothing of the kind is due any more: an earlier record's date is replaced by none.</summary>
    [JsonIgnore]
    public bool IsSettled { get; init; }

    /// <summary>The evaluation of the record that says so.</summary>
    public string? EvaluationId { get; init; }

    /// <summary>What it is the date of, within its kind: later records replace earlier ones of the same key.</summary>
    [JsonIgnore]
    public string Key => Kind switch
    {
        DueKind.Calibration => $"{Instrument}|{SerialNumber}",
        DueKind.EngineerCategory => $"{LicenceNumber}|{Category}",
        _ => $"{Maker?.Trim().ToUpperInvariant()}|{SerialNumber}",
    };
}
