using System.Text;
using System.Text.Json;
using Storage;

namespace Jobs.Previews;

/// <summary>What a preview puts in place of what is in force, and for which visits.</summary>
public sealed record Candidate
{
    /// <summary>The limits of the organisation that runs this service, in the form of the file that Rules:Overrides names; absent: those in force.</summary>
    public JsonElement? Overrides { get; init; }

    /// <summary>The day whose law is to count; absent: the day of each evaluation.</summary>
    public DateOnly? AsOf { get; init; }

    /// <summary>First day of the visits that are looked at; absent: all.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Their last day; absent: all.</summary>
    public DateOnly? To { get; init; }

    /// <summary>The limits as bytes; null: those in force.</summary>
    internal byte[]? OverrideBytes => Overrides is { } json ? Encoding.UTF8.GetBytes(json.GetRawText()) : null;

    internal byte[] ToBytes() => Packed.Of(JsonSerializer.SerializeToUtf8Bytes(this, PreviewJson.Wire.Candidate));

    internal static Candidate Of(byte[] stored) => JsonSerializer.Deserialize(Packed.Open(stored), PreviewJson.Wire.Candidate)!;
}
