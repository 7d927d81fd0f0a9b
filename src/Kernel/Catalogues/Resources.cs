using System.Reflection;
using System.Text.Json;

namespace Kernel.Catalogues;

/// <summary>The data files that stand beside the rules and travel in their assembly.</summary>
internal static class Resources
{
    public static byte[] ReadResource(this Assembly source, string name)
    {
        using var stream = source.GetManifestResourceStream(name)
            ?? throw new CatalogueException([$"{name} is not in {source.GetName().Name}"]);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    /// <summary>Every file whose name ends so.</summary>
    public static IEnumerable<T> ReadResources<T>(this Assembly source, string ending) => source.GetManifestResourceNames()
        .Where(name => name.EndsWith(ending, StringComparison.Ordinal)).Select(source.ReadResource<T>);

    public static T ReadResource<T>(this Assembly source, string name)
    {
        try
        {
            return JsonSerializer.Deserialize<T>(source.ReadResource(name), CatalogueJson.Options)!;
        }
        catch (JsonException exception)
        {
            throw new CatalogueException([$"{name}: {exception.Message}"]);
        }
    }
}
