using System.Collections;
using System.Text.Json;
using Records.Faults;
using Records.Members;
using Records.Validation;
using Wire;

namespace Records.Reading;

/// <summary>
/// Finds every fault of a body at once: what stands at the wrong place or has the wrong form is noted and left out, and what remains
/// is validated too. Faults beyond those that can be listed are only counted.
/// </summary>
internal sealed class FaultFinder
{
    private readonly List<PlacedFault> faults = [];
    private int unlisted;

    public static List<Fault> Find(ReadOnlyMemory<byte> utf8, ServiceRecordValidator validator, IReadOnlyList<string>? jurisdictions = null)
    {
        if (JsonText.Unreadable(utf8.Span) is { } fault)
        {
            return [fault];
        }

        using var document = JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = RecordReader.MaxDepth });
        var finder = new FaultFinder();
        finder.Examine(document.RootElement, validator, jurisdictions);
        return PlacedFault.Listed(finder.faults, finder.unlisted);
    }

    private void Examine(JsonElement root, ServiceRecordValidator validator, IReadOnlyList<string>? jurisdictions)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            Note(new("", FaultCodes.WrongType, FaultTexts.WrongType("one record as an object", root)));
            return;
        }

        var record = (ServiceRecord)ReadSection(root, RecordMembers.Record, "");
        if (record.Jurisdiction is { } code && jurisdictions?.Contains(code, StringComparer.Ordinal) == false)
            Note(new("/jurisdiction", FaultCodes.UnknownValue, FaultTexts.IsNot(code, "one of " + string.Join(", ", jurisdictions))));
        var places = faults.Select(f => f.Place).ToHashSet(StringComparer.Ordinal);
        // Of what is no section nobody can say what it lacks.
        var unread = faults.Where(f => f.Code == FaultCodes.WrongType).Select(f => f.Place + "/").ToList();
        foreach (var fault in validator.Validate(record).Errors.Select(PlacedFault.Of).Where(f => !places.Contains(f.Place) && !unread.Exists(place => f.Place.StartsWith(place, StringComparison.Ordinal))))
        {
            Note(fault);
        }
    }

    /// <summary>Reflection sets init-only members and asks for no required one, so that a record in pieces can be held.</summary>
    private object ReadSection(JsonElement json, Section section, string place)
    {
        var held = Activator.CreateInstance(section.Type)!;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var property in json.EnumerateObject())
        {
            var name = JsonNames.Of(property);
            var at = place + "/" + JsonText.PointerPartOf(name);
            if (!seen.Add(name))
            {
                Note(new(at, FaultCodes.DuplicateMember, FaultTexts.Duplicate(name)));
            }
            else if (section.Find(name) is not { } member)
            {
                // Names are compared only while the fault can still be listed: a hostile body could ask for much of it.
                var known = faults.Count < Fault.MostListed ? section.Members : [];
                Note(new(at, FaultCodes.UnknownMember, FaultTexts.UnknownMember(name, known)));
            }
            else if (property.Value.ValueKind == JsonValueKind.Null)
            {
                NoteIfRequired(member, at);
            }
            else
            {
                member.Property.SetValue(held, member.IsList ? ReadList(property.Value, member, at) : ReadValue(property.Value, member, at));
            }
        }

        foreach (var absent in section.Members.Where(m => !seen.Contains(m.Name)))
        {
            NoteIfRequired(absent, place + "/" + absent.Name);
        }

        return held;
    }

    /// <summary>Of an absent section its own required members are named as well: they would be asked for next.</summary>
    private void NoteIfRequired(RecordMember member, string place)
    {
        if (!member.IsRequired)
        {
            return;
        }

        Note(new(place, FaultCodes.RequiredMember, FaultTexts.Required(member)));
        foreach (var inner in member.Members)
        {
            NoteIfRequired(inner, place + "/" + inner.Name);
        }
    }

    private IList? ReadList(JsonElement json, RecordMember member, string place)
    {
        if (json.ValueKind != JsonValueKind.Array)
        {
            Note(new(place, FaultCodes.WrongType, FaultTexts.WrongType("a list", json)));
            return null;
        }

        if (json.GetArrayLength() > member.MaxItems)
        {
            Note(new(place, FaultCodes.TooManyItems, FaultTexts.TooMany(json.GetArrayLength(), member)));
        }

        var list = (IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(member.ClrType))!;
        foreach (var item in json.EnumerateArray().Take(member.MaxItems!.Value))
        {
            // A faulty item leaves a gap (null, or the first value of an enumeration), so that the later ones keep their index.
            var gap = member.ClrType.IsValueType ? Activator.CreateInstance(member.ClrType) : null;
            list.Add(ReadValue(item, member, $"{place}/{list.Count}") ?? gap);
        }

        return list;
    }

    private object? ReadValue(JsonElement json, RecordMember member, string place)
    {
        if (member.Section is { } section && json.ValueKind == JsonValueKind.Object)
        {
            return ReadSection(json, section, place);
        }

        if (json.ValueKind == JsonValueKind.Null)
        {
            Note(new(place, FaultCodes.NullItem, FaultTexts.NullItem));
            return null;
        }

        var leaf = Leaf.Of(json, member);
        if (leaf.Value is null)
        {
            Note(new(place, leaf.Code, leaf.Detail));
        }

        return leaf.Value;
    }

    private void Note(PlacedFault fault)
    {
        if (faults.Count < Fault.MostListed)
        {
            faults.Add(fault);
        }
        else
        {
            unlisted++;
        }
    }
}
