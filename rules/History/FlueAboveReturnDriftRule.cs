using Findings;
using Kernel;
using Visits;
using Visits.History;

namespace Rules.History;

[Id(RuleIds.FlueAboveReturnDrift), Topic(Topics.HeatExchanger), CommonPractice]
[Title("The flue gas temperature above the return, at one load, does not rise from visit to visit")]
[Why("Flue gas leaving further above the return each year suggests that less of its heat reaches the water. Deposits are the usual cause, and they waste gas well before they trouble the burner.")]
[Serves(Part.WhereRecorded)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.DriftProbability)]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance")]
public sealed class FlueAboveReturnDriftRule() : DriftRule(Drift.FlueAboveReturn)
{
    protected override void Note(Visit visit, Look look) => look.Note(visit.Record.Water?.ReturnTemperatureC);
}
