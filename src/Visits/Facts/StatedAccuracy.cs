using Calculations;
using Records;
using Records.Members;

namespace Visits.Facts;

/// <summary>
/// What the instruments of a record say of their own accuracy. A reading that names its instrument is only as good as that one; any
/// other belongs to the only instrument of the fitting kind. Nothing is guessed: without a statement there is no uncertainty.
/// </summary>
internal static class StatedAccuracy
{
    /// <summary>Standard uncertainty of the value at <paramref name="pointer"/>, in its unit; null where no accuracy is stated for it.</summary>
    public static double? UncertaintyOf(ServiceRecord record, string pointer, decimal value)
    {
        if (record.Instruments?.Any(instrument => instrument.Accuracies is { Count: > 0 }) != true)
            return null;

        var quantity = pointer[(pointer.LastIndexOf('/') + 1)..];
        return InstrumentOf(record, pointer)?.Accuracies?.Where(accuracy => accuracy.Quantity == quantity).ToList() is [var only]
            ? UncertaintyBy(only, value)
            : null;
    }

    /// <summary>Serial number of the instrument that gave the value at <paramref name="pointer"/>; null where the record does not settle which it was.</summary>
    public static string? SerialOf(ServiceRecord record, string pointer) => NamedAt(record, pointer) ?? InstrumentOf(record, pointer)?.SerialNumber;

    private static double? UncertaintyBy(InstrumentAccuracy accuracy, decimal value)
    {
        // A resolution alone is no accuracy, and a relative limit beyond the reading itself says nothing.
        if ((accuracy.Absolute ?? accuracy.RelativePercent) is null || accuracy.RelativePercent > 100)
            return null;

        var uncertainty = Uncertainty.OfReading(
            (double)value, (double)(accuracy.Absolute ?? 0), (double)(accuracy.RelativePercent ?? 0), (double)(accuracy.Resolution ?? 0));
        return uncertainty > 0 ? uncertainty : null;
    }

    private static string? NamedAt(ServiceRecord record, string pointer)
    {
        var named = $"{pointer[..pointer.LastIndexOf('/')]}/instrument";
        return RecordMembers.Find(named) is null ? null : RecordValues.At(record, named) as string;
    }

    private static Instrument? InstrumentOf(ServiceRecord record, string pointer)
    {
        var all = record.Instruments ?? [];
        var serial = NamedAt(record, pointer);
        var fitting = serial is not null
            ? all.Where(instrument => instrument.SerialNumber == serial)
            : all.Where(instrument => instrument.Kind is { } kind && kind == KindFor(pointer));
        return fitting.ToList() is [var only] ? only : null;
    }

    private static InstrumentKind? KindFor(string pointer) => RecordMembers.At(pointer).Unit switch
    {
        // What was used on an earlier visit is not known.
        _ when pointer.StartsWith("/previousVisit/", StringComparison.Ordinal) => null,
        not null when pointer.StartsWith("/combustion/", StringComparison.Ordinal) || pointer.StartsWith("/ambientCo/", StringComparison.Ordinal) => InstrumentKind.FlueGasAnalyser,
        "mbar" or "bar" => InstrumentKind.PressureGauge,
        "Cel" => InstrumentKind.Thermometer,
        "Ohm" or "MOhm" or "uA" => InstrumentKind.Multimeter,
        _ => null,
    };
}
