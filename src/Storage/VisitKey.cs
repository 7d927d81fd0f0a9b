namespace Storage;

/// <summary>By what the history of an appliance is found.</summary>
public static class VisitKey
{
    /// <summary>A maker as it is compared: however it is spaced or capitalised.</summary>
    public static string OfMaker(string? maker) => (maker ?? "").Trim().ToUpperInvariant();

    /// <summary>A serial number as it is stored; empty where there is none.</summary>
    public static string OfSerial(string? serialNumber) => string.IsNullOrWhiteSpace(serialNumber) ? "" : serialNumber;
}
