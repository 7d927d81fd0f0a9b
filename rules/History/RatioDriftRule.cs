using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits.History;

namespace Rules.History;

[Name(RuleIds.RatioDrift), Topic(Topics.Combustion), CommonPractice]
[Description("The CO/CO2 ratio at maximum rate does not rise from visit to visit")]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance")]
public sealed class RatioDriftRule() : DriftRule(Drift.Ratio);
