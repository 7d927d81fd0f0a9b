using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Combustion;

[Id(RuleIds.AirInletCheck), Topic(Topics.Combustion), Cites("BS-7967", "flue integrity"), Cites("GSIUR-1998", "26(9)(a)")]
[Title("No products of combustion reach the air inlet of a room-sealed appliance")]
[Why("Combustion products drawn back in with the air starve the flame and push up the CO that it makes. They also upset the flue reading, so it proves nothing until the air side is shown to be clean.")]
[Serves(Part.AirInlet)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.AirInletO2Most, LimitIds.AmbientCo)]
[AppliesBy("/appliance/flueType")]
[Coverage(Coverage.Full, "both gases are held against the pair of limits")]
public sealed class AirInletCheckRule : VisitRule
{
    protected override string SubjectPointer => "/combustion/airInlet";

    // What was sampled is judged on any boiler that draws its air from outside; it is looked for where a fan drives it.
    protected override bool? Applies(Visit visit) => visit.Record.Combustion?.AirInlet is not null ? visit.IsRoomSealed : visit.IsRoomSealed & visit.IsFanned;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var lacks = look.Lacks(visit.Record.Combustion?.AirInlet?.O2Percent, out var o2) | look.Lacks(visit.Record.Combustion?.AirInlet?.Co2Percent, out var co2);
        if (visit.ProductsReachTheAirInlet())
            return Recirculates(visit, look);
        if (visit.Record.Combustion?.AirInlet is { O2Percent: null, Co2Percent: null } && look.Note(visit.Record.Combustion.AirInlet.NotPracticableReason) is { } reason)
            return look.Advisory($"the air inlet was not sampled, for a stated reason: {reason}").Warn(Cautions.CarbonMonoxide);

        if (lacks)
            return look.Missing();
        if (visit.Limits[LimitIds.AirInletO2Most] is var most && !most.Allows(o2))
        {
            return look.Missing($"the air inlet shows {o2} % oxygen, more than air holds (an analyser shows at most {most.Max}), so products may be hidden", "/combustion/airInlet/o2Percent")
                .Against(most, o2).Warn(Cautions.CarbonMonoxide).Advise("Zero the analyser in outside air and sample the air inlet again.");
        }

        // The pair of limits is written for analysers of the usual accuracy, which is as wide as the distance from air to the limit.
        return look.Pass($"the air inlet shows {o2} % oxygen and {co2} % carbon dioxide: outside air").Against(visit.Limits[LimitIds.AirInletO2], o2);
    }

    // One of the two values is enough to show it.
    private static Verdict Recirculates(Visit visit, Look look)
    {
        var inlet = visit.Record.Combustion!.AirInlet!;
        var o2Limit = visit.Limits[LimitIds.AirInletO2];
        var co2Limit = visit.Limits[LimitIds.AirInletCo2];
        var (limit, value, doubt) = inlet.O2Percent is { } o2 && !o2Limit.Allows(o2)
            ? (o2Limit, o2, look.DoubtOf(visit, visit.Record.Combustion?.AirInlet?.O2Percent))
            : (co2Limit, inlet.Co2Percent!.Value, look.DoubtOf(visit, visit.Record.Combustion?.AirInlet?.Co2Percent));
        var shown = string.Join(" and ", new[]
        {
            inlet.O2Percent is { } oxygen ? WireText.Sentence($"{oxygen} % oxygen (at least {o2Limit.Min})") : null,
            inlet.Co2Percent is { } dioxide ? WireText.Sentence($"{dioxide} % carbon dioxide (below {co2Limit.Max})") : null,
        }.OfType<string>());

        return look.Unsafe($"the air inlet shows {shown}: products recirculate, and the flue reading does not count", look.ClassOfEscapingProducts(visit))
            .Against(limit, value, doubt).Warn(Cautions.CarbonMonoxide)
            .Advise("Find where products reach the air side: inner flue duct, joints, seals, terminal. Put it right and sample the air inlet again before reading the flue.");
    }
}
