using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Water;

[Id(RuleIds.FillingLoopDisconnected), Topic(Topics.Water), CommonPractice]
[Title("The filling loop is left disconnected")]
[Why("Joined to the mains, heating water with its chemicals and dirt can find its way back into the drinking supply. A loop valve that lets by also raises the system pressure until the relief valve lifts.")]
[Serves(Part.FillingLoop)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class FillingLoopDisconnectedRule : WaterRule
{
    protected override string SubjectPointer => "/water/fillingLoopDisconnected";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.FillingLoopDisconnected, out var isOff))
            return look.Missing();

        return isOff
            ? look.Pass($"the filling loop was left disconnected")
            : look.Advisory($"the filling loop was left connected: it can overfill the system and foul the drinking water")
                .Advise("Disconnect the filling loop and cap both ends.");
    }
}
