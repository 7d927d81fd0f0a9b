using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Combustion;

[Id(RuleIds.ReadingOrder), Topic(Topics.Combustion), Cites("BS-7967", "12")]
[Title("The flue is read at maximum rate first, then at minimum")]
[Why("On a premix burner the setting at maximum rate carries through to minimum. Whatever is corrected at maximum afterwards leaves an earlier minimum reading out of date.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2)]
[Coverage(Coverage.MayUnderReport, "the check at the air inlet has no time, so its place in the order is not seen")]
public sealed class ReadingOrderRule : AnalysisRule
{
    protected override Verdict Judge(Visit visit, Look look)
    {
        var maximum = visit.StatedAt(FiringRate.Maximum).ToList();
        var minimum = visit.StatedAt(FiringRate.Minimum).ToList();
        if (maximum.Count == 0)
            return look.Missing($"no flue reading is stated as taken at maximum rate after the work", "/combustion/readings");
        if (minimum.Count == 0)
            return look.Pass($"the flue was read at one rate only");

        var undated = maximum.Concat(minimum).Where(reading => reading.Value.TakenAt is null).Select(reading => $"{reading.Pointer}/takenAt").ToList();
        if (undated.Count > 0)
            return look.Missing($"a flue reading does not say when it was taken", undated);

        return maximum.Min(reading => reading.Value.TakenAt!.Value.Value) <= minimum.Min(reading => reading.Value.TakenAt!.Value.Value)
            ? look.Pass($"the flue was read at maximum rate, then at minimum")
            : look.Advisory($"the flue was read at minimum rate before maximum").Advise("Settle the boiler at maximum rate, read, then go to minimum.");
    }
}
