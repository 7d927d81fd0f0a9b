using System.Collections.Frozen;
using System.Reflection;

namespace Records.Members;

/// <summary>The members of one object of the record, at one place in it.</summary>
internal sealed class Section
{
    private readonly FrozenDictionary<string, RecordMember> byName;

    public Section(Type type, RecordMember? parent)
    {
        Type = type;
        var properties = type.GetProperties(BindingFlags.Public | BindingFlags.Instance).OrderBy(p => p.MetadataToken);
        Members = [.. properties.Select(p => new RecordMember(p, parent))];
        MembersByName = [.. Members.OrderBy(m => m.Name, StringComparer.Ordinal)];
        byName = Members.ToFrozenDictionary(m => m.Name, StringComparer.Ordinal);
    }

    public Type Type { get; }

    /// <summary>In schema order: the order of their declaration.</summary>
    public IReadOnlyList<RecordMember> Members { get; }

    public IReadOnlyList<RecordMember> MembersByName { get; }

    public int OrderOf(RecordMember member) => Members.TakeWhile(m => m != member).Count();

    public RecordMember? Find(string name) => byName.GetValueOrDefault(name);
}
