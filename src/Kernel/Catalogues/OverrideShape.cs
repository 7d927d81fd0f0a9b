using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Wire;

namespace Kernel.Catalogues;

/// <summary>What keeps a line of the deployer's limits from being read: every fault of it, in the words of the file.</summary>
internal static class OverrideShape
{
    private static readonly IList<JsonPropertyInfo> Members = CatalogueJson.Options.GetTypeInfo(typeof(LimitDefinition)).Properties;

    /// <summary>Every member that is unknown, given twice, absent or of a wrong kind.</summary>
    public static IReadOnlyList<string> FaultsOf(JsonElement line)
    {
        if (line.ValueKind != JsonValueKind.Object)
            return ["is no object"];

        var given = line.EnumerateObject().ToLookup(JsonNames.Of, member => member.Value, StringComparer.Ordinal);
        return
        [
            .. given.Where(member => Members.All(known => known.Name != member.Key)).Select(member => $"has a member '{member.Key}', which no limit has"),
            .. given.Where(member => member.Count() > 1).Select(member => $"has more than one member '{member.Key}'"),
            .. Members.Where(known => known.IsRequired && !given.Contains(known.Name)).Select(known => $"does not say '{known.Name}'"),
            .. Members.Where(known => given[known.Name].Any(value => !Fits(value, known))).Select(known => $"says '{known.Name}' in a form in which no limit has it"),
        ];
    }

    private static bool Fits(JsonElement value, JsonPropertyInfo member)
    {
        try
        {
            return value.ValueKind == JsonValueKind.Null ? member.IsSetNullable : value.Deserialize(member.PropertyType, CatalogueJson.Options) is not null;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
