using Findings;
using Kernel.Catalogues;
using Records;
using Records.Members;
using Visits;
using Wire;

namespace Rules.Duties;

/// <summary>What a record must show besides a reason, and what must not stand beside it.</summary>
internal static class ReasonNeeds
{
    /// <summary>Every need of the row is met, and nothing of the record says otherwise than its reason.</summary>
    public static bool AreMet(ReasonRow row, Visit visit) => (row.Needs ?? []).All(need => IsMet(need, row, visit)) && !IsContradicted(row, visit);

    /// <summary>Something of the record says otherwise than the reason of the row.</summary>
    public static bool IsContradicted(ReasonRow row, Visit visit) => (row.ContradictedBy ?? []).Any(fact => IsThere(fact, visit));

    /// <summary>The value at <paramref name="pointer"/> as a record writes it; null where there is none.</summary>
    public static string? TextAt(Visit visit, string pointer) => RecordValues.At(visit.Record, pointer) switch
    {
        null => null,
        Enum value => WireNames.Of(value),
        bool yes => yes ? "true" : "false",
        var other => other.ToString(),
    };

    private static bool IsMet(string need, ReasonRow row, Visit visit) => need switch
    {
        "pressureOrGoodAnalysis" => visit.HasOperatingPressure() || visit.HasGoodAnalysis(),
        "rateOrGoodAnalysis" => visit.HasHeatInput() || visit.HasGoodAnalysis(),
        "goodAnalysis" => visit.HasGoodAnalysis(),
        "pressure" => visit.HasOperatingPressure(),
        "makerSource" => !string.IsNullOrWhiteSpace(visit.Record.MakerLimits?.Source),
        "defectOfTopic" => visit.RecordedDefects.Any(defect => row.Duty is "examineAfterWork" or "proveFlue" ? defect.Defect.Topic == Topics.Flue : defect.IsDangerous),
        "wholeRouteSeen" => visit.Record.Flue?.WholeRouteSeen == true,
        "runningSweepWithoutRise" => visit.Record.AmbientCo is { BeforePpm: { } before, RunningPeakPpm: { } peak } && peak <= before,
        "flueVisualOk" => visit.Record.Flue?.VisualOk == true,
        "notFlueRelocation" => visit.Record.Work?.Kind != WorkKind.FlueRelocation,
        "readingAtMaximum" => visit.BurnsRight() == true,
        "naturalDraughtOrOpenFlue" => visit.Appliance.FlueType is FlueType.RoomSealedNatural or FlueType.OpenFlued,
        "flameSupervisionProved" => visit.SafetyDevices?.Any(device => device.Value is { Kind: SafetyDeviceKind.FlameSupervision, Tested: true, Passed: true }) == true,
        "naturalDraughtOrMakerSource" => visit.Appliance.FlueType is FlueType.RoomSealedNatural or FlueType.OpenFlued || !string.IsNullOrWhiteSpace(visit.Record.MakerLimits?.Source),
        "trapFilled" => visit.Record.Condensate?.TrapRefilled == true,
        _ => false,
    };

    // "/gasSupply/rate", "/gasSupply/meterDisplayWorks true", "/heatExchanger/deposits light or heavy", "/gasSupply/meterKind other than none",
    // "a joint of place meterUnion or testNipple".
    private static bool IsThere(string fact, Visit visit)
    {
        const string Joint = "a joint of place ";
        if (fact.StartsWith(Joint, StringComparison.Ordinal))
            return visit.DisturbedJoints?.Any(joint => joint.Value.Place is { } place && fact[Joint.Length..].Split(" or ").Contains(WireNames.Of(place), StringComparer.Ordinal)) == true;

        var words = fact.Split(' ', 2);
        if (TextAt(visit, words[0]) is not { } found)
            return false;

        return words.Length == 1 || (words[1].StartsWith("other than ", StringComparison.Ordinal)
            ? found != words[1]["other than ".Length..]
            : words[1].Split(" or ").Contains(found, StringComparer.Ordinal));
    }
}
