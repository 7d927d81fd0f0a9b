using System.Collections;
using System.Globalization;

namespace Records.Members;

/// <summary>Values of a record by JSON Pointer. Slow (reflection): for asking what is absent, not for judging.</summary>
public static class RecordValues
{
    /// <summary>The value at <paramref name="jsonPointer"/>, or null where the record carries none.</summary>
    /// <exception cref="ArgumentException">No record has a member there.</exception>
    public static object? At(ServiceRecord record, string jsonPointer)
    {
        RecordMembers.At(jsonPointer);
        object? value = record;
        var section = RecordMembers.Record;
        foreach (var part in jsonPointer.Split('/')[1..])
        {
            if (section.Find(part) is { } member)
            {
                value = value is null ? null : member.Property.GetValue(value);
                section = member.Section ?? section;
            }
            else
            {
                var isIndex = int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var index);
                value = value is IList items && isIndex && index < items.Count ? items[index] : null;
            }
        }

        return value;
    }
}
