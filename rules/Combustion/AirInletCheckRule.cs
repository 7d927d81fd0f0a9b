using Findings;
using NRules.Fluent.Dsl;
using RuleModel;

namespace Rules;

[Name(RuleIds.AirInletCheck), Topic(Topics.Combustion), Cites("BS-7967", "flue integrity"), Cites("GSIUR-1998", "26(9)(a)")]
[Description("No products of combustion reach the air inlet of a room-sealed appliance")]
[AppliesBy("/appliance/flueType")]
public sealed class AirInletCheckRule : VisitRule
{
    protected override string SubjectPointer => "/combustion/airInlet";

    protected override bool? Applies(Visit visit) => visit.IsRoomSealed;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Combustion?.AirInlet?.NotPracticableReason) is { } reason && visit.Record.Combustion?.AirInlet?.O2Percent is null)
            return look.Advisory($"the air inlet was not sampled, for a stated reason: {reason}").Warn(Cautions.CarbonMonoxide);
        if (look.Lacks(visit.Record.Combustion?.AirInlet?.O2Percent, out var o2) | look.Lacks(visit.Record.Combustion?.AirInlet?.Co2Percent, out var co2))
            return look.Missing();

        var o2Limit = visit.Limits[LimitIds.AirInletO2];
        var co2Limit = visit.Limits[LimitIds.AirInletCo2];
        var (limit, value) = o2Limit.Allows(o2) ? (co2Limit, co2) : (o2Limit, o2);
        return limit.Allows(value)
            ? look.Pass($"the air inlet shows {o2} % oxygen and {co2} % carbon dioxide: outside air").Against(o2Limit, o2)
            : look.Unsafe($"the air inlet shows {o2} % oxygen (at least {o2Limit.Min}) and {co2} % carbon dioxide (below {co2Limit.Max}): products recirculate, and the flue reading does not count", look.ClassOfEscapingProducts(visit))
                .Against(limit, value).Warn(Cautions.CarbonMonoxide)
                .Advise("Find where products reach the air side: inner flue duct, joints, seals, terminal. Put it right and sample the air inlet again before reading the flue.");
    }
}
