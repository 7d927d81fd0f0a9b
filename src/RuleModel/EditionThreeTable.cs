using Findings;
using Records;

namespace RuleModel;

/// <summary>The permitted drops of IGEM/UP/1B Edition 3, by meter and widest pipe.</summary>
public static class EditionThreeTable
{
    // Ids of limits.
    private const string WidestOfFirstColumn = "tightness-table-pipe";
    private const string Line = "permitted-drop-edition-3";

    /// <summary>The permitted drop; null where the table has no line for the meter.</summary>
    /// <param name="meter">The meter in the tested section.</param>
    /// <param name="pipeMm">Outside diameter of the widest pipe, mm.</param>
    /// <param name="limits">The limits in force; natural gas only.</param>
    public static Limit? PermittedDrop(MeterKind meter, decimal pipeMm, LimitSheet limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var column = limits[WidestOfFirstColumn].Allows(pipeMm) ? 28 : 35;
        return meter switch
        {
            MeterKind.None or MeterKind.UltrasonicE6 => limits[$"{Line}-none-{column}"],
            MeterKind.DiaphragmU6 => limits[$"{Line}-u6-{column}"],
            MeterKind.DiaphragmU16 => limits[$"{Line}-u16-{column}"],
            _ => null,
        };
    }
}
