using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.TightnessScope), Topic(Topics.Tightness), Cites("IGEM-UP-1B", "scope")]
[Title("The installation is one for which the standard for small installations is written")]
[Why("The same leak drops the pressure quickly in a small volume and hardly at all in a large one. Used outside its scope, a test for small installations can read tight while gas escapes.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Uses(LimitIds.TightnessScopeVolume, LimitIds.MeterVolumeU6, LimitIds.MeterVolumeU16, LimitIds.MeterVolumeE6, LimitIds.TightnessScopePipe,
    LimitIds.TightnessScopeSupply)]
[Expects("/tightnessTests")]
[Coverage(Coverage.MayOverReport, "a meter of another kind counts as outside")]
public sealed class TightnessScopeRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        // An absent figure reads as 0 and lies outside nothing; it is asked for once nothing else is outside.
        var lacks = look.Lacks(test.InstallationVolumeM3, out var volume) | look.Lacks(test.LargestPipeMm, out var pipe)
            | look.Lacks(test.SupplyPressureBar, out var supply)
            | (IsMeterNeeded(test, visit) && look.Lacks(visit.Record.GasSupply?.MeterKind, out _));
        var meter = look.Note(visit.Record.GasSupply?.MeterKind);
        var largest = visit.Limits[LimitIds.TightnessScopeVolume];
        var widest = visit.Limits[LimitIds.TightnessScopePipe];
        var highest = visit.Limits[LimitIds.TightnessScopeSupply];
        if (!largest.Allows(volume))
            return Outside(look.Missing($"the installation volume is {volume} m3, above {largest.Max} m3",
                $"{look.Subject}/installationVolumeM3").Against(largest, volume));
        if (!widest.Allows(pipe))
            return Outside(look.Missing($"the largest pipe is {pipe} mm, above {widest.Max} mm",
                $"{look.Subject}/largestPipeMm").Against(widest, pipe));
        if (!highest.Allows(supply))
            return Outside(look.Missing($"the supply has up to {supply} bar, above {highest.Max} bar",
                $"{look.Subject}/supplyPressureBar").Against(highest, supply));

        if (meter == MeterKind.Other)
            return Outside(look.Missing($"the meter is of a kind that the standard for small installations does not name", "/gasSupply/meterKind"));

        // The volume has the meter in it: one that is smaller is a slip of the pen.
        var held = VolumeOf(meter, visit);
        if (test.InstallationVolumeM3 is not null && (volume <= 0 || held?.Allows(volume) == false))
        {
            var verdict = look.Missing(
                volume <= 0
                    ? (FormattableString)$"the installation volume is recorded as {volume} m3, and no pipe is without volume"
                    : $"the installation volume is recorded as {volume} m3, and the meter alone holds {held!.Min} m3",
                $"{look.Subject}/installationVolumeM3")
                .Advise("Work the installation volume out again: pipes, fittings and meter.");
            return held is null ? verdict : verdict.Against(held, volume);
        }

        if (lacks)
            return look.Missing();

        return string.IsNullOrWhiteSpace(look.Note(test.InstallationVolumeFrom))
            ? look.Advisory($"the record gives {volume} m3 as installation volume and does not say how it was found")
                .Against(largest, volume)
            : look.Pass($"{volume} m3, {pipe} mm and {supply} bar are within {largest.Max} m3, {widest.Max} mm and {highest.Max} bar")
                .Against(largest, volume);
    }

    // What may be lost goes by the meter in Edition 3 alone; where nothing was lost nothing hangs on it.
    private static bool IsMeterNeeded(TightnessTest test, Visit visit) =>
        test.DropMbar is not (null or 0) && TightnessEditions.Governing(test.Edition, TightnessEditions.DayOf(test, visit)) is null or TightnessEditions.Third;

    private static Limit? VolumeOf(MeterKind? meter, Visit visit) => meter switch
    {
        MeterKind.DiaphragmU6 => visit.Limits[LimitIds.MeterVolumeU6],
        MeterKind.DiaphragmU16 => visit.Limits[LimitIds.MeterVolumeU16],
        MeterKind.UltrasonicE6 => visit.Limits[LimitIds.MeterVolumeE6],
        _ => null,
    };

    private static Verdict Outside(Verdict verdict) => verdict
        .Warn("A test for small installations can overlook a leak in a larger one. This service does not judge larger installations.")
        .Advise("Have the installation tested by the standard for larger installations (IGEM/UP/1A) by an engineer competent for it.");
}
