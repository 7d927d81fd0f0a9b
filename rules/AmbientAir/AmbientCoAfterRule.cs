using Findings;
using Kernel;
using Visits;

namespace Rules.AmbientAir;

[Id(RuleIds.AmbientCoAfter), Topic(Topics.AmbientAir), Cites("BS-7967", "6.3.2"), Cites("GSIUR-1998", "26(9)(a)")]
[Title("The final sweep finds the room air free of carbon monoxide")]
[Why("The final sweep shows what the household will breathe once the engineer has gone. A seal or case put back badly shows itself only now, with everything closed up and the boiler hot.")]
[AlsoRecordedAt("/ambientCo", "/flue", "/combustion", "/ventilation")]
[Serves(Part.RoomAirAfter)]
[Uses(LimitIds.AmbientCo, LimitIds.AmbientCoCeiling, LimitIds.AmbientCoRise)]
[Coverage(Coverage.MayOverReport, "traffic, cooking or smoke can raise the room as well")]
public sealed class AmbientCoAfterRule : VisitRule
{
    protected override string SubjectPointer => "/ambientCo";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.AmbientCo?.AfterPpm, out var ppm))
            return look.Missing();

        var doubt = look.DoubtOf(visit, visit.Record.AmbientCo?.AfterPpm);
        var rise = visit.Limits[LimitIds.AmbientCoRise];
        if (visit.Record.AmbientCo?.RunningPeakPpm is { } running && ppm > running && look.AboveTheCeiling(visit, "at the final sweep", ppm, doubt) is null)
        {
            // The analyser may explain each step from sweep to sweep, and not the whole way.
            look.Note(visit.Record.AmbientCo?.RunningPeakPpm);
            var from = rise.Allows(ppm - running) ? look.Note(visit.Record.AmbientCo?.BeforePpm) ?? running : running;
            if (!rise.Allows(ppm - from))
            {
                return look.Unsafe($"carbon monoxide in the room air keeps rising: {running} ppm at most while the boiler ran, {ppm} at the final sweep, up from {from}", ExpectedClass.ImmediatelyDangerous)
                    .Against(rise, ppm - from).Warn(Cautions.RoomAir).Advise("Turn the boiler off, let air in and find where products enter the room.");
            }
        }

        if (look.RaisedWithTheBoiler(visit, "at the final sweep", ppm, doubt) is { } raised)
            return raised;

        return look.Lacks(visit.Record.AmbientCo?.RunningPeakPpm, out _)
            ? look.Missing()
            : look.Pass($"at the final sweep the room air showed {ppm} ppm carbon monoxide").Against(visit.Limits[LimitIds.AmbientCo], ppm, doubt);
    }
}
