using System.Collections.Frozen;
using Records;

namespace Storage;

/// <summary>By what the history of an appliance is found.</summary>
public static class VisitKey
{
    // What is written where a plate cannot be read. It names no appliance, and many have it.
    private static readonly FrozenSet<string> NoNumbers = FrozenSet.Create(
        StringComparer.Ordinal, "UNKNOWN", "UNK", "NOTKNOWN", "NA", "NK", "NONE", "NIL", "NULL", "NO", "NOSERIAL", "NOSERIALNUMBER", "NONUMBER", "NOPLATE", "NODATAPLATE", "NOTAVAILABLE", "NOTAPPLICABLE", "NOTRECORDED",
        "NOTREADABLE", "NOTLEGIBLE", "NOTVISIBLE", "NOTSEEN", "NOTFOUND", "NOTSTATED", "UNREADABLE", "ILLEGIBLE", "MISSING", "WORNOFF", "TBA", "TBC", "SERIAL", "SERIALNUMBER", "TEST");

    /// <summary>A maker, an engineer or premises as they are compared: however they are spaced at the ends or capitalised. Empty where the record names none.</summary>
    public static string OfName(string? name) => (name ?? "").Trim().ToUpperInvariant();

    /// <summary>A serial number as it is stored; empty where there is none.</summary>
    public static string OfSerial(string? serialNumber) => string.IsNullOrWhiteSpace(serialNumber) ? "" : serialNumber;

    /// <summary>A serial number by its letters and digits; empty where there is none, or a word or one digit over and over stands in its place.</summary>
    public static string OfPlate(string? serialNumber)
    {
        var text = string.Concat((serialNumber ?? "").Where(char.IsLetterOrDigit)).ToUpperInvariant();
        return NoNumbers.Contains(text) || text.All(letter => letter == text[0]) ? "" : text;
    }

    /// <summary>When the visit began; empty where the record does not say.</summary>
    public static string OfStart(ServiceRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.StartedAt is { } started ? Database.TextOf(started.Value) : "";
    }
}
