using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits.History;

namespace Rules.History;

[Name(RuleIds.Co2Drift), Topic(Topics.Combustion), CommonPractice]
[Description("The CO2 at maximum rate does not drift from visit to visit")]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance, and an adjustment of the burner is no member")]
public sealed class Co2DriftRule() : DriftRule(Drift.Co2);
