using Findings;
using Kernel;
using Visits;
using Visits.History;

namespace Rules.History;

[Id(RuleIds.PrechargeDrift), Topic(Topics.Water), CommonPractice]
[Title("The precharge of the expansion vessel does not fall from visit to visit")]
[Why("Air lost from an expansion vessel leaves heated water with less room to expand. System pressure then swings until the relief valve lifts or the boiler stops for want of water.")]
[Serves(Part.WhereRecorded)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.DriftProbability)]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance")]
public sealed class PrechargeDriftRule() : DriftRule(Drift.Precharge)
{
    protected override void Note(Visit visit, Look look) => look.Note(visit.Record.Water?.VesselPrechargeBar);
}
