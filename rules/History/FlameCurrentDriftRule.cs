using Findings;
using Kernel;
using Visits;
using Visits.History;

namespace Rules.History;

[Id(RuleIds.FlameCurrentDrift), Topic(Topics.Burner), CommonPractice]
[Title("The flame current does not fall from visit to visit")]
[Why("Falling flame current warns of a fouled probe, a poor earth or a burner past its best. Caught now it can be put right at a service; missed, it can end as a lock-out.")]
[Serves(Part.WhereRecorded)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.DriftProbability)]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance")]
public sealed class FlameCurrentDriftRule() : DriftRule(Drift.FlameCurrent)
{
    protected override void Note(Visit visit, Look look) => look.Note(visit.Record.Burner?.FlameCurrentMicroamps);
}
