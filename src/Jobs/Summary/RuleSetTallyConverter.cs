using System.Text.Json;
using Findings;

namespace Jobs.Summary;

/// <summary>Reads and writes a tally, also one that an older version stored.</summary>
public sealed class RuleSetTallyConverter : RuleSetConverter<RuleSetTally>
{
    /// <inheritdoc />
    protected override RuleSetTally From(JsonElement members, RuleSetInfo ruleSet) => new()
    {
        Id = ruleSet.Id,
        Version = ruleSet.Version,
        LawHash = ruleSet.LawHash,
        CodeHash = ruleSet.CodeHash,
        Records = members.GetProperty("records").GetInt32(),
    };

    /// <inheritdoc />
    protected override RuleSetInfo RuleSetOf(RuleSetTally value) => new() { Id = value.Id, Version = value.Version, LawHash = value.LawHash, CodeHash = value.CodeHash };

    /// <inheritdoc />
    protected override void WriteMore(Utf8JsonWriter writer, RuleSetTally value) => writer.WriteNumber("records"u8, value.Records);
}
