using System.Text.Json;
using System.Text.Json.Serialization;

namespace Kernel.Catalogues;

/// <summary>How the data files beside the rules are read: strictly, since a slip in them would be a silent hole.</summary>
public static class CatalogueJson
{
    /// <summary>The options.</summary>
    public static JsonSerializerOptions Options { get; } = new(JsonSerializerDefaults.Web)
    {
        PropertyNameCaseInsensitive = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        NumberHandling = JsonNumberHandling.Strict,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };
}
