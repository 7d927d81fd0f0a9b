using System.Collections.Concurrent;

namespace Records.Members;

/// <summary>Every member of the service record, read once from the types and their attributes.</summary>
public static class RecordMembers
{
    /// <summary>Every rule asks for the same few hundred places; what hostile records ask for beyond that is searched each time.</summary>
    private const int MostKept = 10_000;

    private static readonly ConcurrentDictionary<string, RecordMember?> Found = new(StringComparer.Ordinal);

    /// <summary>Members of the record itself, in schema order.</summary>
    public static IReadOnlyList<RecordMember> Root => Record.Members;

    internal static Section Record { get; } = new(typeof(ServiceRecord), parent: null);

    /// <summary>Every member at every place, each section before its members, in schema order.</summary>
    public static IReadOnlyList<RecordMember> All { get; } = [.. Root.SelectMany(WithMembers)];

    /// <summary>
    /// The member at a JSON Pointer such as <c>/combustion/readings/0/coPpm</c>; an index may be any number or <c>*</c>.
    /// A pointer to a list item gives the list. Null when the record has no such place.
    /// </summary>
    public static RecordMember? Find(string jsonPointer) => Found.TryGetValue(jsonPointer, out var known) ? known : Keep(jsonPointer, Search(jsonPointer));

    /// <summary>The member at a JSON Pointer, which must exist.</summary>
    /// <exception cref="ArgumentException">The record has no such place.</exception>
    public static RecordMember At(string jsonPointer) =>
        Find(jsonPointer) ?? throw new ArgumentException($"No record has a member '{jsonPointer}'.", nameof(jsonPointer));

    /// <summary>Whether a JSON Pointer leads to one place that a record can have; one with <c>*</c> leads to many.</summary>
    public static bool IsPlace(string jsonPointer) => !jsonPointer.Contains('*', StringComparison.Ordinal) && Find(jsonPointer) is not null;

    /// <summary>The members of a section type, at the first place where the record has it, in schema order.</summary>
    public static IReadOnlyList<RecordMember> Of(Type section) => SectionOf(section).Members;

    /// <summary>A section type, at the first place where the record has it.</summary>
    internal static Section SectionOf(Type type) => type == Record.Type ? Record : All.First(m => m.ClrType == type).Section!;

    private static RecordMember? Keep(string jsonPointer, RecordMember? member)
    {
        if (Found.Count < MostKept)
        {
            Found[jsonPointer] = member;
        }

        return member;
    }

    private static RecordMember? Search(string jsonPointer)
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

            member = (member is null ? Record : member.Section)?.Find(part);
            if (member is null)
            {
                return null;
            }

            inItem = false;
        }

        return member;
    }

    private static IEnumerable<RecordMember> WithMembers(RecordMember member) => member.Members.SelectMany(WithMembers).Prepend(member);
}
