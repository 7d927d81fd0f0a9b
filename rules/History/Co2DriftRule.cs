using Findings;
using Kernel;
using Visits.History;

namespace Rules.History;

[Id(RuleIds.Co2Drift), Topic(Topics.Combustion), CommonPractice]
[Title("The CO2 at maximum rate does not drift from visit to visit")]
[Why("CO2 that moves from visit to visit points to a shift in the balance of gas and air, as when an air path clogs or a valve wears. Followed early, it can be put right before it leaves the manufacturer's band.")]
[Serves(Part.WhereRecorded)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.DriftProbability)]
[Coverage(Coverage.MayOverReport, "one steady history in twenty looks like a drift by chance, and an adjustment of the burner is no member")]
public sealed class Co2DriftRule() : DriftRule(Drift.Co2);
