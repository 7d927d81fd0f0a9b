using System.Text.Json;
using System.Text.Json.Serialization;

namespace Findings;

/// <summary>
/// Reads and writes what names a rule set with its two hashes. What an older version stored has one, <c>contentHash</c>, over law and code
/// together; where it is read it stands for both, so that two answers with equal hashes were judged by the same of each.
/// </summary>
/// <typeparam name="T">What names the rule set.</typeparam>
public abstract class RuleSetConverter<T> : JsonConverter<T>
    where T : class
{
    /// <inheritdoc />
    public sealed override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var json = JsonDocument.ParseValue(ref reader);
        var members = json.RootElement;
        var older = members.TryGetProperty("contentHash", out var both) ? both.GetString() : null;
        return From(members, new RuleSetInfo
        {
            Id = TextOf("id"),
            Version = TextOf("version"),
            LawHash = older ?? TextOf("lawHash"),
            CodeHash = older ?? TextOf("codeHash"),
        });

        string TextOf(string name) => members.TryGetProperty(name, out var member) && member.GetString() is { } text
            ? text
            : throw new JsonException($"A rule set without {name}.");
    }

    /// <inheritdoc />
    public sealed override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        var ruleSet = RuleSetOf(value);
        writer.WriteStartObject();
        writer.WriteString("id"u8, ruleSet.Id);
        writer.WriteString("version"u8, ruleSet.Version);
        writer.WriteString("lawHash"u8, ruleSet.LawHash);
        writer.WriteString("codeHash"u8, ruleSet.CodeHash);
        WriteMore(writer, value);
        writer.WriteEndObject();
    }

    /// <summary>The value that these members give.</summary>
    protected abstract T From(JsonElement members, RuleSetInfo ruleSet);

    /// <summary>The rule set that the value names.</summary>
    protected abstract RuleSetInfo RuleSetOf(T value);

    /// <summary>Writes the members beyond those of the rule set.</summary>
    protected virtual void WriteMore(Utf8JsonWriter writer, T value)
    {
    }
}

/// <summary>A rule set alone.</summary>
public sealed class RuleSetInfoConverter : RuleSetConverter<RuleSetInfo>
{
    /// <inheritdoc />
    protected override RuleSetInfo From(JsonElement members, RuleSetInfo ruleSet) => ruleSet;

    /// <inheritdoc />
    protected override RuleSetInfo RuleSetOf(RuleSetInfo value) => value;
}
