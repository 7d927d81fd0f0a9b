using System.Text.Json.Serialization;

namespace Findings;

/// <summary>One answer of one rule about one subject of the record. Flat, and never changed once made.</summary>
/// <remarks>Most answers are passes, of which little is ever shown: what a rule says beyond its outcome is worked out when it is read.</remarks>
public sealed class Finding
{
    private IStatement? _said;

    /// <summary>The rule that answers.</summary>
    public required string RuleId { get; init; }

    /// <summary>The subject area, one of a published list (combustion, tightness, joints, ...).</summary>
    public required string Topic { get; init; }

    /// <summary>What the rule says.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>The rule's demand in words.</summary>
    public required string Title { get; init; }

    /// <summary>One sentence with the measured value and the limit.</summary>
    public string? Message { get => _said?.Message; init => Given.Message = value; }

    /// <summary>JSON Pointer (RFC 6901) of what is judged; empty for the whole visit.</summary>
    public required string Subject { get; init; }

    /// <summary>What the rule looked at.</summary>
    public IReadOnlyList<Evidence>? Evidence { get => _said?.Evidence; init => Given.Evidence = value; }

    /// <summary>The limit that decided.</summary>
    public Limit? Limit { get => _said?.Limit; init => Given.Limit = value; }

    /// <summary>Distance to the limit in the limit's unit, positive inside.</summary>
    public decimal? Margin { get => _said?.Margin; init => Given.Margin = value; }

    /// <summary>True where a limit was read that the organisation running this service has loosened; message and limit name it.</summary>
    public bool? Loosened { get => _said?.Loosened; init => Given.Loosened = value; }

    /// <summary>Probability (0..1) that the true value conforms, where the instrument's accuracy is stated.</summary>
    public decimal? Conformity { get => _said?.Conformity; init => Given.Conformity = value; }

    /// <summary>For unsafe findings: the class that the trade's procedure would be expected to give. The engineer on site decides.</summary>
    public ExpectedClass? ExpectedClass { get => _said?.ExpectedClass; init => Given.ExpectedClass = value; }

    /// <summary>Who can be hurt, and what to mind.</summary>
    public string? Caution { get => _said?.Caution; init => Given.Caution = value; }

    /// <summary>The work that would put it right.</summary>
    public string? Remedy { get => _said?.Remedy; init => Given.Remedy = value; }

    /// <summary>The laws and standards that the rule rests on.</summary>
    public IReadOnlyList<Reference>? References { get; init; }

    /// <summary>Path of the rule's page.</summary>
    public string? Documentation { get; init; }

    /// <summary>Where message, evidence, limit and what belongs to them come from.</summary>
    [JsonIgnore]
    public IStatement? Statement { get => _said; init => _said = value; }

    /// <summary>Is there anything to report?</summary>
    [JsonIgnore]
    public bool IsProblem => Outcome is not (Outcome.Pass or Outcome.NotApplicable);

    private GivenStatement Given => (GivenStatement)(_said ??= new GivenStatement());

    /// <summary>A statement that was read back, part by part.</summary>
    private sealed class GivenStatement : IStatement
    {
        public string? Message { get; set; }

        public IReadOnlyList<Evidence>? Evidence { get; set; }

        public Limit? Limit { get; set; }

        public decimal? Margin { get; set; }

        public bool? Loosened { get; set; }

        public decimal? Conformity { get; set; }

        public ExpectedClass? ExpectedClass { get; set; }

        public string? Caution { get; set; }

        public string? Remedy { get; set; }
    }
}

/// <summary>One value of the record that a rule looked at.</summary>
public sealed class Evidence
{
    /// <summary>JSON Pointer of the member.</summary>
    public required string Pointer { get; init; }

    /// <summary>The value as recorded; absent when the record does not carry it.</summary>
    public string? Value { get; init; }

    /// <summary>The value as a number, where it is one.</summary>
    public decimal? Number { get; init; }

    /// <summary>Unit of the number (UCUM).</summary>
    public string? Unit { get; init; }
}

/// <summary>A clause of a law or standard.</summary>
public sealed class Reference
{
    /// <summary>Short id of the document, as in <c>/v1/references</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Title of the document.</summary>
    public required string Title { get; init; }

    /// <summary>The clause that the rule rests on.</summary>
    public string? Clause { get; init; }

    /// <summary>Where it applies: ISO 3166-2 codes joined by commas.</summary>
    public string? Jurisdiction { get; init; }
}
