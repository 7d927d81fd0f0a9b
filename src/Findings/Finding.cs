using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;

namespace Findings;

/// <summary>One answer of one rule about one subject of the record. Flat, and never changed once made.</summary>
/// <remarks>Most answers are passes, of which little is ever shown: their sentence and evidence are there only where everything was kept.</remarks>
public sealed class Finding
{
    private readonly bool _isShort;
    private IRuleText? _rule;
    private IStatement? _said;

    /// <summary>A finding that is given part by part.</summary>
    [JsonConstructor]
    public Finding()
    {
    }

#pragma warning disable CS8618 // The rule has id, topic and title.
    /// <summary>A finding of which the parts are known.</summary>
    /// <param name="rule">What it shares with the others of its rule.</param>
    /// <param name="subject">JSON Pointer of what is judged.</param>
    /// <param name="outcome">What the rule says.</param>
    /// <param name="said">The rest of it.</param>
    [SetsRequiredMembers]
    public Finding(IRuleText rule, string subject, Outcome outcome, IStatement said)
    {
        _rule = rule;
        Subject = subject;
        Outcome = outcome;
        _said = said;
    }

    [SetsRequiredMembers]
    private Finding(IRuleText rule, string subject, Outcome outcome) => (_rule, Subject, Outcome, _isShort) = (rule, subject, outcome, true);
#pragma warning restore CS8618

    /// <summary>The rule that answers.</summary>
    public required string RuleId { get => Rule.RuleId; init => GivenRule.RuleId = value; }

    /// <summary>The subject area, one of a published list (combustion, tightness, joints, ...).</summary>
    [WholeOnly(OfRows = true)]
    public required string Topic { get => Rule.Topic; init => GivenRule.Topic = value; }

    /// <summary>What the rule says.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>What it weighs that evidence is missing; absent where nothing is.</summary>
    public Weight? Weight { get => _said?.Weight; init => Given.Weight = value; }

    /// <summary>True where it was not done, for a reason of <c>work.notDone</c> that counts.</summary>
    public bool? NotDone { get => _said?.NotDone; init => Given.NotDone = value; }

    /// <summary>The rule's demand in words.</summary>
    public required string Title { get => Rule.Title; init => GivenRule.Title = value; }

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
    public IReadOnlyList<Reference>? References { get => _isShort ? null : Rule.References; init => GivenRule.References = value; }

    /// <summary>Path of the rule's page.</summary>
    [WholeOnly]
    public string? Documentation { get => _isShort ? null : Rule.Documentation; init => GivenRule.Documentation = value; }

    /// <summary>What it shares with the others of its rule.</summary>
    [JsonIgnore]
    public IRuleText Rule => _rule!;

    /// <summary>Is it but the row of a list?</summary>
    [JsonIgnore]
    public bool IsRow => _isShort;

    /// <summary>Is there anything to report?</summary>
    [JsonIgnore]
    public bool IsProblem => Outcome is not (Outcome.Pass or Outcome.NotApplicable);

    /// <summary>The row of a list: what is judged and the outcome.</summary>
    public Finding InShort() => new(Rule, Subject, Outcome);

    private GivenRuleText GivenRule => (GivenRuleText)(_rule ??= new GivenRuleText());

    private GivenStatement Given => (GivenStatement)(_said ??= new GivenStatement());

    /// <summary>The rule of a finding that was read back, part by part.</summary>
    private sealed class GivenRuleText : IRuleText
    {
        public string RuleId { get; set; } = "";

        public string Topic { get; set; } = "";

        public string Title { get; set; } = "";

        public IReadOnlyList<Reference>? References { get; set; }

        public string? Documentation { get; set; }
    }

    /// <summary>A statement that was read back, part by part.</summary>
    private sealed class GivenStatement : IStatement
    {
        public Weight? Weight { get; set; }

        public bool? NotDone { get; set; }

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

    /// <summary>Does it only decide how grave a danger is?</summary>
    [JsonIgnore]
    public bool IsForClass { get; init; }
}

/// <summary>A clause of a law or standard.</summary>
public sealed class Reference
{
    /// <summary>Short id of the document, as in <c>/v1/references</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Title of the document.</summary>
    [WholeOnly]
    public required string Title { get; init; }

    /// <summary>The clause that the rule rests on.</summary>
    public string? Clause { get; init; }

    /// <summary>Where it applies: ISO 3166-2 codes joined by commas.</summary>
    [WholeOnly]
    public string? Jurisdiction { get; init; }
}
