using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace ServiceRecords;

/// <summary>How members and enumeration values are spelt in JSON: camelCase of the C# name, or the name that an attribute gives.</summary>
public static class WireNames
{
    private static readonly ConcurrentDictionary<Type, IReadOnlyList<string>> Values = new();

    /// <summary>Wire names of an enumeration's values, in the order of their declaration.</summary>
    public static IReadOnlyList<string> OfValues(Type enumType) => Values.GetOrAdd(enumType, static type =>
    [
        .. type.GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(f => f.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()?.Name ?? OfMember(f.Name)),
    ]);

    /// <summary>Wire name of one enumeration value; the values of every enumeration here count up from zero.</summary>
    public static string Of(Enum value) => OfValues(value.GetType())[Convert.ToInt32(value, CultureInfo.InvariantCulture)];

    internal static string OfMember(string name) => JsonNamingPolicy.CamelCase.ConvertName(name);
}
