using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Wire;

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

    /// <inheritdoc cref="Of(Enum)" />
    public static string Of<T>(T value) where T : struct, Enum => NamesOf<T>.All[Unsafe.As<T, int>(ref value)];

    /// <summary>Wire name of one enumeration value; null for none.</summary>
    [return: NotNullIfNotNull(nameof(value))]
    public static string? Of<T>(T? value) where T : struct, Enum => value is { } known ? Of(known) : null;

    private static class NamesOf<T> where T : struct, Enum
    {
        public static readonly string[] All = [.. OfValues(typeof(T))];
    }

    /// <summary>Wire name of a member.</summary>
    public static string OfMember(string name) => JsonNamingPolicy.CamelCase.ConvertName(name);
}
