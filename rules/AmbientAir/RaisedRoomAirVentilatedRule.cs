using Findings;
using Kernel;
using Visits;

namespace Rules.AmbientAir;

[Id(RuleIds.RaisedRoomAirVentilated), Topic(Topics.AmbientAir), Cites("BS-7967", "6.2.2")]
[Title("A room with raised carbon monoxide is aired")]
[Why("In a closed room CO lingers after its source has been turned off. People go on breathing it until windows and doors are opened, and what is left spoils the next sweep.")]
[Serves(Part.RoomAired)]
[Uses(LimitIds.AmbientCo)]
[AppliesBy("/ambientCo/beforePpm", "/ambientCo/runningPeakPpm", "/ambientCo/afterPpm")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class RaisedRoomAirVentilatedRule : VisitRule
{
    protected override string SubjectPointer => "/ambientCo";

    protected override bool? Applies(Visit visit) => visit.CoIsRaised();

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.AmbientCo?.Ventilated, out var ventilated))
            return look.Missing($"carbon monoxide was found in the room, and whether the room was aired is not recorded");

        return ventilated
            ? look.Pass($"the room was aired")
            : look.Advisory($"carbon monoxide was found in the room, and the room was not aired")
                .Warn(Cautions.RoomAir).Advise("Open windows and doors, and sweep the room again.");
    }
}
