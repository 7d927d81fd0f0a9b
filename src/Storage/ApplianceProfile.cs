using System.Text.Json;
using System.Text.Json.Serialization;
using Records;

namespace Storage;

/// <summary>Limits from a maker's instructions that the deployer keeps for one kind of appliance.</summary>
public sealed class ApplianceProfile
{
    /// <summary>The deployer's own id, by which a record's <c>appliance.profileId</c> names it.</summary>
    public required string ProfileId { get; init; }

    /// <summary>Counts up from 1; each save makes a new one.</summary>
    public required int Version { get; init; }

    /// <summary>When this version was saved (RFC 3339, UTC).</summary>
    public required DateTimeOffset SavedAt { get; init; }

    /// <summary>The limits. A record's own go before them where they are stricter or name their source, and neither lifts a ceiling.</summary>
    public required MakerLimits Limits { get; init; }
}

/// <summary>Limits as they are kept.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(MakerLimits))]
internal sealed partial class ProfileJson : JsonSerializerContext;
