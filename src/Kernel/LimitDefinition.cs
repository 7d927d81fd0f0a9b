using System.Text.Json.Serialization;
using Findings;
using Wire;

namespace Kernel;

/// <summary>
/// One line of limits.json, or of the deployer's overrides: a limit with where and when it applies. An absent list applies to all.
/// </summary>
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

    /// <summary>True where the value must stay below <c>max</c>.</summary>
    public bool? MaxExcluded { get; init; }

    /// <summary>Unit (UCUM).</summary>
    public required string Unit { get; init; }

    /// <summary>Step in which the limited value is displayed. Values are compared unrounded.</summary>
    public required decimal Resolution { get; init; }

    /// <summary>Fuels, as a record names them.</summary>
    [ValuesOf("Fuel")]
    public IReadOnlyList<string>? Fuels { get; init; }

    /// <summary>Jurisdictions (ISO 3166-2).</summary>
    [ValuesOf("Jurisdiction")]
    public IReadOnlyList<string>? Jurisdictions { get; init; }

    /// <summary>First day in force; absent: always was.</summary>
    public DateOnly? InForceFrom { get; init; }

    /// <summary>Last day in force; absent: no end known.</summary>
    public DateOnly? InForceTo { get; init; }

    /// <summary>Who set it.</summary>
    public required LimitOrigin Origin { get; init; }

    /// <summary>Document and clause, or how it came to be.</summary>
    public required string Source { get; init; }

    /// <summary>Was the figure read in its published source? Of a shipped limit that follows from its strength; a deployer says it of their own.</summary>
    public bool Verified
    {
        get => StatedVerified ?? (Strength == LimitStrength.Derived ? Inputs : Strength)?.IsRead() == true;
        init => StatedVerified = value;
    }

    /// <summary>Whether it is a fact, worked out, or a judgement of this service; absent of an override.</summary>
    public LimitKind? Kind { get; init; }

    /// <summary>How well the figure is known; absent of an override.</summary>
    public LimitStrength? Strength { get; init; }

    /// <summary>Of a figure that is worked out: how well the weakest figure is known that goes into it.</summary>
    public LimitStrength? Inputs { get; init; }

    /// <summary>The document that gives the figure; absent where none does.</summary>
    public string? Document { get; init; }

    /// <summary>Its edition.</summary>
    public string? Edition { get; init; }

    /// <summary>Where in it.</summary>
    public string? Clause { get; init; }

    /// <summary>The last day on which it was read there; absent where it was not.</summary>
    public DateOnly? ReadOn { get; init; }

    /// <summary>True where neither a maker's value nor the deployer lifts it.</summary>
    public bool? Ceiling { get; init; }

    /// <summary>Which change makes it stricter; absent: a narrower range.</summary>
    public Tightening? Tighter { get; init; }

    /// <summary>For a table by installation volume: the line is for volumes above this one, itself excluded; absent: from nothing on.</summary>
    public decimal? VolumeAboveM3 { get; init; }

    /// <summary>For a table by installation volume: the line is for volumes up to this one, itself included; absent: without end.</summary>
    public decimal? VolumeUpToM3 { get; init; }

    /// <summary>Who set an override.</summary>
    public string? Who { get; init; }

    /// <summary>Why an override was set.</summary>
    public string? Why { get; init; }

    /// <summary>True where an override is looser than the limit that it replaces.</summary>
    public bool? Loosens { get; init; }

    /// <summary>The limit in words, where numbers do not say all of it: that the deployer has loosened it, and why.</summary>
    public string? Text => Loosens == true ? $"loosened by the deployer: {Why} ({Who})" : null;

    /// <summary>Is it a line of a table by installation volume?</summary>
    [JsonIgnore]
    public bool IsBand => VolumeAboveM3 is not null || VolumeUpToM3 is not null;

    /// <summary>Does this line apply? Without a fuel: to any.</summary>
    public bool AppliesTo(string? fuel, string jurisdiction, DateOnly day) =>
        (fuel is null || Fuels?.Contains(fuel, StringComparer.Ordinal) != false) && Jurisdictions?.Contains(jurisdiction, StringComparer.Ordinal) != false && IsInForce(day);

    /// <summary>Is it in force on <paramref name="day"/>?</summary>
    public bool IsInForce(DateOnly day) => (InForceFrom is null || InForceFrom <= day) && (InForceTo is null || day <= InForceTo);

    /// <summary>Is there a visit to which both lines apply?</summary>
    public bool Meets(LimitDefinition other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return (Fuels is null || other.Fuels is null || Fuels.Intersect(other.Fuels, StringComparer.Ordinal).Any())
            && (Jurisdictions is null || other.Jurisdictions is null || Jurisdictions.Intersect(other.Jurisdictions, StringComparer.Ordinal).Any())
            && !(InForceTo < other.InForceFrom) && !(other.InForceTo < InForceFrom);
    }

    /// <summary>Would this line in place of <paramref name="other"/>, which has the same bounds, let anything through that the other stops?</summary>
    public bool IsLooserThan(LimitDefinition other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return other.Tighter == Tightening.Wider ? Reaches(other, beyond: this) : Reaches(this, beyond: other);
    }

    private static bool Reaches(LimitDefinition line, LimitDefinition beyond) =>
        line.Min < beyond.Min || line.Max > beyond.Max || (line.Max == beyond.Max && beyond.MaxExcluded == true && line.MaxExcluded != true);

    /// <summary>What the line itself says of whether it was read.</summary>
    [JsonIgnore]
    internal bool? StatedVerified { get; init; }

    /// <summary>The limit as a finding shows it.</summary>
    [JsonIgnore]
    public Limit AsLimit => field ??= new Limit
    {
        Min = Min,
        Max = Max,
        MaxExcluded = MaxExcluded,
        Text = Text,
        Unit = Unit,
        Origin = Origin,
        Source = Verified ? Source : $"{Source} (figure not verified)",
        Verified = Verified,
        Kind = Kind,
        Strength = Strength,
        Document = Document,
        Edition = Edition,
        Clause = Clause,
        ReadOn = ReadOn,
        InForceFrom = InForceFrom,
    };
}
