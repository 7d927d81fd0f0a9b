using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;
using Visits.History;

namespace Rules.History;

[Name(RuleIds.FlueAboveReturnDrift), Topic(Topics.HeatExchanger), CommonPractice]
[Description("The flue gas temperature above the return, at one load, does not rise from visit to visit")]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance")]
public sealed class FlueAboveReturnDriftRule() : DriftRule(Drift.FlueAboveReturn)
{
    protected override void Note(Visit visit, Look look) => look.Note(visit.Record.Water?.ReturnTemperatureC);
}
