using Findings;
using Kernel;
using Visits.History;

namespace Rules.History;

[Id(RuleIds.RatioDrift), Topic(Topics.Combustion), CommonPractice]
[Title("The CO/CO2 ratio at maximum rate does not rise from visit to visit")]
[Why("A ratio creeping up over the years can be the first sign of a burner fouling, a fan tiring or a seal letting go. Each reading may be within its limit while the next one may not be.")]
[Serves(Part.WhereRecorded)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.DriftProbability)]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance")]
public sealed class RatioDriftRule() : DriftRule(Drift.Ratio);
