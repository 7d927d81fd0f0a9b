using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.TightnessScope), Topic(Topics.Tightness), Cites("IGEM-UP-1B", "scope")]
[Description("The installation is one for which the standard for small installations is written")]
[Expects("/tightnessTests")]
public sealed class TightnessScopeRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        // An absent figure reads as 0 and lies outside nothing; it is asked for once nothing else is outside.
        var lacks = look.Lacks(test.InstallationVolumeM3, out var volume) | look.Lacks(test.LargestPipeMm, out var pipe)
            | look.Lacks(test.SupplyPressureBar, out var supply);
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

        if (lacks)
            return look.Missing();

        return string.IsNullOrWhiteSpace(look.Note(test.InstallationVolumeFrom))
            ? look.Advisory($"the record gives {volume} m3 as installation volume and does not say how it was found")
                .Against(largest, volume)
            : look.Pass($"{volume} m3, {pipe} mm and {supply} bar are within {largest.Max} m3, {widest.Max} mm and {highest.Max} bar")
                .Against(largest, volume);
    }

    private static Verdict Outside(Verdict verdict) => verdict
        .Warn("A test for small installations can overlook a leak in a larger one. This service does not judge larger installations.")
        .Advise("Have the installation tested by the standard for larger installations (IGEM/UP/1A) by an engineer competent for it.");
}
