using Findings;
using Kernel;
using Records;

namespace Rules.Tightness;

/// <summary>The permitted drops of IGEM/UP/1B Edition 3, by meter and widest pipe.</summary>
internal static class EditionThreeTable
{
    /// <summary>The permitted drop; null where the table has no line for the meter.</summary>
    /// <param name="meter">The meter in the tested section.</param>
    /// <param name="pipeMm">Outside diameter of the widest pipe, mm.</param>
    /// <param name="limits">The limits in force; natural gas only.</param>
    public static Limit? PermittedDrop(MeterKind meter, decimal pipeMm, LimitSheet limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var isNarrow = limits[LimitIds.TightnessTablePipe].Allows(pipeMm);
        return meter switch
        {
            MeterKind.None or MeterKind.UltrasonicE6 => limits[isNarrow ? LimitIds.PermittedDropEdition3None28 : LimitIds.PermittedDropEdition3None35],
            MeterKind.DiaphragmU6 => limits[isNarrow ? LimitIds.PermittedDropEdition3U628 : LimitIds.PermittedDropEdition3U635],
            MeterKind.DiaphragmU16 => limits[isNarrow ? LimitIds.PermittedDropEdition3U1628 : LimitIds.PermittedDropEdition3U1635],
            _ => null,
        };
    }
}
