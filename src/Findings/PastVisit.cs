namespace Findings;

/// <summary>
/// What is kept of an earlier visit to an appliance: all that the rules over history read. An answer that used it shows it, so that it
/// can be worked out again from the record and the answer's context alone.
/// </summary>
public sealed record PastVisit
{
    /// <summary>The stored evaluation of that visit.</summary>
    public string? EvaluationId { get; init; }

    /// <summary>When it ended, at its own offset.</summary>
    public required DateTimeOffset FinishedAt { get; init; }

    /// <summary>Kind of job, as the record names it.</summary>
    public string? JobType { get; init; }

    /// <summary>Of a landlord's check: the date on which it counts (regulation 36A). Absent: it was none.</summary>
    public DateOnly? CheckCountedOn { get; init; }

    /// <summary>Maker on the plate then.</summary>
    public string? Maker { get; init; }

    /// <summary>Model on the plate then.</summary>
    public string? Model { get; init; }

    /// <summary>Fuel then, as the record names it.</summary>
    public string? Fuel { get; init; }

    /// <summary>What was measured.</summary>
    public required IReadOnlyList<PastValue> Values { get; init; }

    /// <summary>Whether parts were fitted; absent: not recorded.</summary>
    public bool? PartsFitted { get; init; }

    /// <summary>Whether the heat exchanger was cleaned; absent: not recorded.</summary>
    public bool? ExchangerCleaned { get; init; }

    /// <summary>The defects noted; absent: none.</summary>
    public IReadOnlyList<PastDefect>? Defects { get; init; }

    /// <summary>The dangers of this appliance with what became of them; absent: none.</summary>
    public IReadOnlyList<PastDanger>? Dangers { get; init; }

    /// <summary>What then waited until the appliance is used again, and what of it was made up then; absent: nothing.</summary>
    public IReadOnlyList<Deferral>? Deferrals { get; init; }

    /// <summary>The date written in <see cref="FinishedAt"/>.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public DateOnly Date => DateOnly.FromDateTime(FinishedAt.DateTime);
}

/// <summary>One measured value of an earlier visit.</summary>
public sealed record PastValue
{
    /// <summary>What it is: a member of the record, or a figure made of two.</summary>
    public required string Name { get; init; }

    /// <summary>The value, in the unit of that member.</summary>
    public required decimal Value { get; init; }

    /// <summary>Standard uncertainty in the same unit; absent where no accuracy was stated.</summary>
    public decimal? Uncertainty { get; init; }

    /// <summary>Serial number of the instrument; absent where the record does not settle it.</summary>
    public string? Instrument { get; init; }

    /// <summary>Load at which the boiler ran, %; absent where it does not matter or was not recorded.</summary>
    public decimal? LoadPercent { get; init; }
}

/// <summary>A defect noted at an earlier visit.</summary>
public sealed record PastDefect
{
    /// <summary>Its subject area, where it was named.</summary>
    public string? Topic { get; init; }

    /// <summary>JSON Pointer of what it was about, where that was named.</summary>
    public string? Subject { get; init; }

    /// <summary>Where it was.</summary>
    public string? Location { get; init; }

    /// <summary>What it was.</summary>
    public string? Description { get; init; }

    /// <summary>What was done about it, as the record names it; absent: not recorded.</summary>
    public string? Action { get; init; }
}

/// <summary>A danger that was found at an earlier visit, or named in an earlier answer.</summary>
public sealed record PastDanger
{
    /// <summary>The rule that found it.</summary>
    public required string RuleId { get; init; }

    /// <summary>Its subject area.</summary>
    public string? Topic { get; init; }

    /// <summary>JSON Pointer of where it was in the record of that visit.</summary>
    public required string Subject { get; init; }

    /// <summary>Of a flue reading: the rate at which it was taken, as the record names it.</summary>
    public string? Rate { get; init; }

    /// <summary>What had become of it.</summary>
    public required DangerState State { get; init; }

    /// <summary>Was it left, whatever was done about it short of putting it right?</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public bool IsLeft => State != DangerState.PutRight;
}
