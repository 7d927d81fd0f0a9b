namespace Visits.Computations;

/// <summary>The unit strings (UCUM, case sensitive) of records, limits, figures and computations: the one published list.</summary>
public static class Units
{
    /// <summary>Every unit.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "1", "%", "[ppm]", "mg/m3",
        "Cel", "K",
        "bar", "mbar", "Pa",
        "mm", "m", "mm/m", "cm2", "cm2/kW", "L", "m3", "m3/m", "[cft_i]",
        "s", "min", "h", "d", "mo", "/h",
        "m3/h", "L/h", "L/min", "kg/s", "kg/h", "kg/(kW.h)", "m3/(h.m2)",
        "kW", "kW.h", "MJ/m3",
        "A", "uA", "Ohm", "MOhm",
        "1/a", "%/a", "K/a", "bar/a", "uA/a",
    ];
}
