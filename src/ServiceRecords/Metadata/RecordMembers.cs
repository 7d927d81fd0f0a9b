using System.Collections.Frozen;
using System.Reflection;

namespace ServiceRecords;

/// <summary>Every member of the service record, read once from the types and their attributes.</summary>
public static class RecordMembers
{
    /// <summary>Members of the record itself, in schema order.</summary>
    public static IReadOnlyList<RecordMember> Root { get; } = Of(typeof(ServiceRecord), parent: null);

    internal static FrozenDictionary<string, RecordMember> RootByName { get; } = Root.ToFrozenDictionary(m => m.Name, StringComparer.Ordinal);

    /// <summary>Every member at every place, each section before its members, in schema order.</summary>
    public static IReadOnlyList<RecordMember> All { get; } = [.. Root.SelectMany(WithMembers)];

    /// <summary>
    /// The member at a JSON Pointer such as <c>/combustion/readings/0/coPpm</c>; an index may be any number or <c>*</c>.
    /// A pointer to a list item gives the list. Null when the record has no such place.
    /// </summary>
    public static RecordMember? Find(string jsonPointer)
    {
        if (!jsonPointer.StartsWith('/'))
        {
            return null;
        }

        RecordMember? member = null;
        var inItem = false;
        foreach (var part in jsonPointer[1..].Split('/'))
        {
            if (member is { IsList: true } && !inItem)
            {
                if (part is not "*" && !(part.Length > 0 && part.All(char.IsAsciiDigit)))
                {
                    return null;
                }

                inItem = true;
                continue;
            }

            member = (member?.ByName ?? RootByName).GetValueOrDefault(part);
            if (member is null)
            {
                return null;
            }

            inItem = false;
        }

        return member;
    }

    /// <summary>The member at a JSON Pointer, which must exist.</summary>
    /// <exception cref="ArgumentException">The record has no such place.</exception>
    public static RecordMember At(string jsonPointer) =>
        Find(jsonPointer) ?? throw new ArgumentException($"No record has a member '{jsonPointer}'.", nameof(jsonPointer));

    internal static IReadOnlyList<RecordMember> Of(Type type, RecordMember? parent) =>
        type.IsClass && type != typeof(string)
            ? [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).OrderBy(p => p.MetadataToken).Select(p => new RecordMember(p, parent))]
            : [];

    private static IEnumerable<RecordMember> WithMembers(RecordMember member) => member.Members.SelectMany(WithMembers).Prepend(member);
}
