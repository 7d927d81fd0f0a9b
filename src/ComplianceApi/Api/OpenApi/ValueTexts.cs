using System.Collections.Concurrent;
using System.Reflection;
using System.Xml.Linq;
using Wire;

namespace ComplianceApi.Api.OpenApi;

/// <summary>Says of an enumeration what each value means, from the comments in the code.</summary>
internal sealed class ValueTexts
{
    private readonly ConcurrentDictionary<Assembly, Dictionary<string, string>> _comments = new();

    /// <summary>The description of the enumeration with a line for each value.</summary>
    public string Describe(Type type, string? description)
    {
        var comments = _comments.GetOrAdd(type.Assembly, Read);
        var lines = type.GetFields(BindingFlags.Public | BindingFlags.Static).Zip(WireNames.OfValues(type), (field, name) =>
            comments.TryGetValue($"F:{type.FullName}.{field.Name}", out var text) ? $"- {name}: {text}" : $"- {name}");
        return $"{description}\n\n{string.Join('\n', lines)}";
    }

    /// <summary>What a value means.</summary>
    public string Of(Enum value) => _comments.GetOrAdd(value.GetType().Assembly, Read)[$"F:{value.GetType().FullName}.{value}"];

    /// <summary>What the type is.</summary>
    public string Of(Type type) => _comments.GetOrAdd(type.Assembly, Read).GetValueOrDefault($"T:{type.FullName}", type.Name);

    private static Dictionary<string, string> Read(Assembly assembly) =>
        XDocument.Load(Path.ChangeExtension(assembly.Location, ".xml")).Descendants("member")
            .Where(member => member.Element("summary") is not null)
            .ToDictionary(member => member.Attribute("name")!.Value, member => string.Join(' ', member.Element("summary")!.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparer.Ordinal);
}
