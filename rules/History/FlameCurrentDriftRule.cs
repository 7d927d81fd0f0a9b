using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;
using Visits.History;

namespace Rules.History;

[Name(RuleIds.FlameCurrentDrift), Topic(Topics.Burner), CommonPractice]
[Description("The flame current does not fall from visit to visit")]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance")]
public sealed class FlameCurrentDriftRule() : DriftRule(Drift.FlameCurrent)
{
    protected override void Note(Visit visit, Look look) => look.Note(visit.Record.Burner?.FlameCurrentMicroamps);
}
