using System.Collections;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Unicode;

namespace ServiceRecords;

/// <summary>
/// Finds every fault of a body at once: what stands at the wrong place or has the wrong form is noted and left out, and what remains
/// is validated too.
/// </summary>
internal sealed class FaultFinder
{
    private readonly List<PlacedFault> faults = [];

    public static List<Fault> Find(ReadOnlyMemory<byte> utf8, ServiceRecordValidator validator)
    {
        if (Unreadable(utf8.Span) is { } fault)
        {
            return [fault];
        }

        using var document = JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = RecordReader.MaxDepth });
        var finder = new FaultFinder();
        finder.Examine(document.RootElement, validator);
        return PlacedFault.Listed(finder.faults);
    }

    private void Examine(JsonElement root, ServiceRecordValidator validator)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            Note("", FaultCodes.WrongType, FaultTexts.WrongType("one record as an object", root));
            return;
        }

        var record = (ServiceRecord)ReadSection(root, RecordMembers.Record, "");
        var places = faults.Select(f => f.Place).ToHashSet(StringComparer.Ordinal);
        faults.AddRange(validator.Validate(record).Errors.Select(PlacedFault.Of).Where(f => !places.Contains(f.Place)));
    }

    /// <summary>Reflection sets init-only members and asks for no required one, so that a record in pieces can be held.</summary>
    private object ReadSection(JsonElement json, Section section, string place)
    {
        var held = Activator.CreateInstance(section.Type)!;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var property in json.EnumerateObject())
        {
            var name = FaultTexts.NameOf(property);
            var at = place + "/" + PlacedFault.Escape(name);
            if (!seen.Add(name))
            {
                Note(at, FaultCodes.DuplicateMember, $"The object has more than one member '{FaultTexts.Shown(name)}'.");
            }
            else if (section.Find(name) is not { } member)
            {
                Note(at, FaultCodes.UnknownMember, FaultTexts.UnknownMember(name, section));
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

    /// <summary>Of an absent section its own required members are named as well: they will be asked for next.</summary>
    private void NoteIfRequired(RecordMember member, string place)
    {
        if (!member.IsRequired)
        {
            return;
        }

        Note(place, FaultCodes.RequiredMember, FaultTexts.Required(member));
        foreach (var inner in member.Members)
        {
            NoteIfRequired(inner, place + "/" + inner.Name);
        }
    }

    private IList? ReadList(JsonElement json, RecordMember member, string place)
    {
        if (json.ValueKind != JsonValueKind.Array)
        {
            Note(place, FaultCodes.WrongType, FaultTexts.WrongType("a list", json));
            return null;
        }

        var list = (IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(member.ClrType))!;
        foreach (var item in json.EnumerateArray())
        {
            // A faulty item leaves a gap (null, or the first value of an enumeration), so that the later ones keep their index.
            list.Add(ReadValue(item, member, $"{place}/{list.Count}") ?? (member.ClrType.IsValueType ? Activator.CreateInstance(member.ClrType) : null));
        }

        return list;
    }

    private object? ReadValue(JsonElement json, RecordMember member, string place)
    {
        if (json.ValueKind == JsonValueKind.Null)
        {
            Note(place, FaultCodes.NullItem, FaultTexts.NullItem);
            return null;
        }

        var type = member.ClrType;
        var expected = member switch
        {
            { IsSection: true } => JsonValueKind.Object,
            _ when type == typeof(decimal) => JsonValueKind.Number,
            _ when type == typeof(bool) => json.ValueKind == JsonValueKind.False ? JsonValueKind.False : JsonValueKind.True,
            _ => JsonValueKind.String,
        };
        if (json.ValueKind != expected)
        {
            Note(place, FaultCodes.WrongType, FaultTexts.WrongType(FaultTexts.Expected(member), json));
            return null;
        }

        return expected switch
        {
            JsonValueKind.Object => ReadSection(json, member.Section!, place),
            JsonValueKind.Number => ReadNumber(json, place),
            JsonValueKind.String => ReadText(json, member, place),
            _ => json.GetBoolean(),
        };
    }

    private decimal? ReadNumber(JsonElement json, string place)
    {
        if (ExactDecimal.TryParse(JsonMarshal.GetRawUtf8Value(json), out var number))
        {
            return number;
        }

        Note(place, FaultCodes.NotExact, "The number has more digits than can be held exactly (28 significant digits, 28 after the point).");
        return null;
    }

    private object? ReadText(JsonElement json, RecordMember member, string place)
    {
        if (FaultTexts.TextOf(json) is not { } text)
        {
            Note(place, FaultCodes.TextCharacters, "The text has half of a surrogate pair.");
        }
        else if (member.ClrType == typeof(string))
        {
            return text;
        }
        else if (member.ClrType == typeof(Timestamp))
        {
            if (Timestamp.TryParse(text, out var timestamp))
            {
                return timestamp;
            }

            Note(place, FaultCodes.NotADateTime, $"{FaultTexts.Quoted(text)} is no date-time with an offset, such as 2026-09-14T10:25:00+01:00.");
        }
        else if (member.ClrType == typeof(DateOnly))
        {
            if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            {
                return date;
            }

            Note(place, FaultCodes.NotADate, $"{FaultTexts.Quoted(text)} is no day of the calendar, such as 2026-09-14.");
        }
        else
        {
            var index = member.AllowedValues.ToList().IndexOf(text);
            if (index >= 0)
            {
                return Enum.ToObject(member.ClrType, index);
            }

            Note(place, FaultCodes.UnknownValue, FaultTexts.UnknownValue(text, member));
        }

        return null;
    }

    private void Note(string place, string code, string detail) => faults.Add(new PlacedFault(place, code, detail));

    private static Fault? Unreadable(ReadOnlySpan<byte> utf8)
    {
        if (utf8.IsEmpty)
        {
            return new Fault("#", FaultCodes.EmptyBody, "The body is empty; one record as a JSON object is expected.");
        }

        if (!Utf8.IsValid(utf8))
        {
            return new Fault("#", FaultCodes.NotUtf8, "The body is not UTF-8.");
        }

        try
        {
            var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = int.MaxValue });
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray && reader.CurrentDepth >= RecordReader.MaxDepth)
                {
                    return new Fault("#", FaultCodes.TooDeep, $"The body is nested deeper than {RecordReader.MaxDepth} levels.");
                }
            }

            return null;
        }
        catch (JsonException fault)
        {
            var line = (fault.LineNumber + 1)?.ToString(CultureInfo.InvariantCulture);
            var column = (fault.BytePositionInLine + 1)?.ToString(CultureInfo.InvariantCulture);
            return new Fault("#", FaultCodes.NotJson, $"The body is not JSON: line {line}, byte {column}.");
        }
    }
}
