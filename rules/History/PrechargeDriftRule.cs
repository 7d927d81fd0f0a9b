using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;
using Visits.History;

namespace Rules.History;

[Name(RuleIds.PrechargeDrift), Topic(Topics.Water), CommonPractice]
[Description("The precharge of the expansion vessel does not fall from visit to visit")]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance")]
public sealed class PrechargeDriftRule() : DriftRule(Drift.Precharge)
{
    protected override void Note(Visit visit, Look look) => look.Note(visit.Record.Water?.VesselPrechargeBar);
}
