using System.Collections;
using System.Globalization;

namespace ServiceRecords;

/// <summary>Values of a record by JSON Pointer. Slow (reflection): for asking what is absent, not for judging.</summary>
public static class RecordValues
{
    /// <summary>The value at <paramref name="jsonPointer"/>, or null where the record carries none.</summary>
    /// <exception cref="ArgumentException">No record has a member there.</exception>
    public static object? At(ServiceRecord record, string jsonPointer)
    {
        object? value = record;
        RecordMember? member = null;
        foreach (var part in jsonPointer.Split('/')[1..])
        {
            if (value is IList items)
            {
                value = int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < items.Count ? items[index] : null;
                continue;
            }

            member = (member is null ? RecordMembers.Record : member.Section)?.Find(part)
                ?? throw new ArgumentException($"No record has a member '{jsonPointer}'.", nameof(jsonPointer));
            value = value is null ? null : member.Property.GetValue(value);
        }

        return value;
    }
}
