using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.VentsClear), Topic(Topics.Ventilation), Cites("BS-5440", "2"), Cites("GSIUR-1998", "26(9)(b)")]
[Title("No vent is blocked")]
[Why("Householders cover vents to stop a draught, and an open-flued boiler may then spill into the room. Few of them connect the two, so it is left to the engineer to see it and say why the vent has to stay open.")]
[Serves(Part.Air)]
[Uses(LimitIds.AmbientCo)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class VentsClearRule : VisitRule
{
    protected override string SubjectPointer => "/ventilation";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Ventilation?.Blocked, out var blocked))
            return look.Missing();
        if (!blocked)
            return look.Pass($"no vent is blocked");

        // A room-sealed boiler takes no air from the room: its vents only cool. One that does not say its type may be open-flued.
        return (look.Note(visit.Record.Appliance.FlueType) is not null && visit.IsRoomSealed == true
            ? look.Advisory($"a vent is blocked")
            : look.Unsafe($"a vent that feeds an open-flued boiler is blocked", look.ClassOfEscapingProducts(visit)))
            .Warn(Cautions.CarbonMonoxide).Advise("Open the vent, tell the user why it must stay open, and repeat the tests that hang on it.");
    }
}
