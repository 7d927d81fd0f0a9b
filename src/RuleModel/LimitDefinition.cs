using System.Text.Json.Serialization;
using Findings;
using ServiceRecords;

namespace RuleModel;

/// <summary>One line of limits.json: a limit with where and when it applies. An absent list applies to all.</summary>
public sealed class LimitDefinition
{
    /// <summary>Id, shared by the lines that differ in where and when they apply.</summary>
    public required string Id { get; init; }

    /// <summary>What is limited, in words.</summary>
    public required string What { get; init; }

    /// <summary>Smallest conforming value.</summary>
    public decimal? Min { get; init; }

    /// <summary>Largest conforming value.</summary>
    public decimal? Max { get; init; }

    /// <summary>True where the value must stay below <see cref="Max"/>.</summary>
    public bool? MaxExcluded { get; init; }

    /// <summary>Unit (UCUM).</summary>
    public required string Unit { get; init; }

    /// <summary>Step in which the limited value is displayed. Values are compared unrounded.</summary>
    public required decimal Resolution { get; init; }

    /// <summary>Fuels.</summary>
    public IReadOnlyList<Fuel>? Fuels { get; init; }

    /// <summary>Jurisdictions.</summary>
    public IReadOnlyList<Jurisdiction>? Jurisdictions { get; init; }

    /// <summary>First day in force; absent: always was.</summary>
    public DateOnly? InForceFrom { get; init; }

    /// <summary>Last day in force; absent: no end known.</summary>
    public DateOnly? InForceTo { get; init; }

    /// <summary>Who set it.</summary>
    public required LimitOrigin Origin { get; init; }

    /// <summary>Document and clause, or how it came to be.</summary>
    public required string Source { get; init; }

    /// <summary>Was the figure read in its published source?</summary>
    public required bool Verified { get; init; }

    /// <summary>Does this line apply?</summary>
    public bool AppliesTo(Fuel fuel, Jurisdiction jurisdiction, DateOnly day) =>
        Fuels?.Contains(fuel) != false
        && Jurisdictions?.Contains(jurisdiction) != false
        && (InForceFrom is null || InForceFrom <= day)
        && (InForceTo is null || day <= InForceTo);

    /// <summary>The limit as a finding shows it.</summary>
    [JsonIgnore]
    public Limit AsLimit => field ??= new Limit
    {
        Min = Min,
        Max = Max,
        MaxExcluded = MaxExcluded,
        Unit = Unit,
        Origin = Origin,
        Source = Verified ? Source : $"{Source} (figure not verified)",
        Verified = Verified,
        InForceFrom = InForceFrom,
    };
}
