using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Water;

[Name(RuleIds.FillingLoopDisconnected), Topic(Topics.Water), CommonPractice]
[Description("The filling loop is left disconnected")]
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
