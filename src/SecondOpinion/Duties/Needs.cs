using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>What a reason needs beside it, by the names in the table of reasons.</summary>
internal static class Needs
{
    /// <exception cref="InvalidOperationException">The table names a need that nobody here knows.</exception>
    public static bool IsMet(Visit visit, string need)
    {
        var record = visit.Record;
        return need switch
        {
            "pressureOrGoodAnalysis" => (Gas.IsPressureGood(visit) && !Gas.AreBothNecessary(visit)) || Analysis.IsGood(visit),
            "rateOrGoodAnalysis" => (Gas.IsRateGood(visit) && !Gas.AreBothNecessary(visit)) || Analysis.IsGood(visit),
            "goodAnalysis" => Analysis.IsGood(visit),
            "pressure" => Examination.PressureExamined(visit.One),
            "makerSource" => !string.IsNullOrWhiteSpace(record.MakerLimits?.Source),
            "defectOfTopic" => visit.Defects.Any(defect => defect.Class is DefectClass.AtRisk or DefectClass.ImmediatelyDangerous && defect.Told?.Count > 0),
            "wholeRouteSeen" => record.Flue is { WholeRouteSeen: true } or { InspectionHatches: true, EffectivenessConfirmed: true },
            "runningSweepWithoutRise" => RoomSweep.IsWithoutRise(record.AmbientCo),
            "flueVisualOk" => record.Flue?.VisualOk == true,
            "notFlueRelocation" => record.Work?.Kind != WorkKind.FlueRelocation,
            "readingAtMaximum" => Analysis.HasGoodReading(visit, FiringRate.Maximum),
            "naturalDraughtOrOpenFlue" => record.Appliance.FlueType is FlueType.RoomSealedNatural or FlueType.OpenFlued,
            "flameSupervisionProved" => record.SafetyDevices?.Any(device => device is { Kind: SafetyDeviceKind.FlameSupervision, Tested: true, Passed: true }) == true,
            "naturalDraughtOrMakerSource" => IsMet(visit, "naturalDraughtOrOpenFlue") || IsMet(visit, "makerSource"),
            "trapFilled" => record.Condensate?.TrapRefilled == true,
            _ => throw new InvalidOperationException($"The table of reasons needs '{need}', which is not known here."),
        };
    }
}
