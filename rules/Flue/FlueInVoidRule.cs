using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.FlueInVoid), Topic(Topics.Flue), Cites("GSIUR-1998", "26(9)(a)"), Cites("IGEM-G-11"), InForce(From = "2013-01-01")]
[Title("A room-sealed fanned flue that runs in a void can be examined through hatches at its joints")]
[Why("Joints hidden above a ceiling or behind boxing can part with nobody to see it. CO then gathers in the void and seeps into rooms, sometimes those of a neighbour.")]
[Serves(Part.Flue, AtMost = Weight.Should)]
[Uses(LimitIds.AmbientCo, LimitIds.HatchWidth, LimitIds.HatchToJoint)]
[AppliesBy("/flue/inVoid", "/appliance/flueType")]
[Coverage(Coverage.MayUnderReport, "one hatch and one distance stand for all joints")]
public sealed class FlueInVoidRule : VisitRule
{
    protected override string SubjectPointer => "/flue";

    protected override bool? Applies(Visit visit) => visit.Record.Flue?.InVoid & visit.IsRoomSealed & visit.IsFanned;

    protected override Verdict Assess(Visit visit, Look look)
    {
        look.Note(visit.Record.Flue?.InVoid);
        if (look.Lacks(visit.Record.Flue?.InspectionHatches, out var hatches))
            return look.Missing($"the flue runs in a void, and whether it has inspection hatches is not recorded");
        if (!hatches)
            return Hidden(look.Unsafe($"the flue runs in a void without inspection hatches", look.ClassOfEscapingProducts(visit)));
        var widthLimit = visit.Limits[LimitIds.HatchWidth];
        var distanceLimit = visit.Limits[LimitIds.HatchToJoint];
        var lacks = look.Lacks(visit.Record.Flue?.HatchWidthMm, out var width) | look.Lacks(visit.Record.Flue?.HatchToJointMm, out var distance);
        var isTooNarrow = visit.Record.Flue?.HatchWidthMm is not null && !widthLimit.Allows(width);
        var isTooFar = visit.Record.Flue?.HatchToJointMm is not null && !distanceLimit.Allows(distance);
        var isConfirmed = look.Note(visit.Record.Flue?.EffectivenessConfirmed);
        if (lacks && !((isTooNarrow || isTooFar) && isConfirmed == false))
            return look.Missing($"the flue runs in a void, and whether every joint can be reached is not recorded");
        if (!isTooNarrow && !isTooFar)
            return look.Pass($"the flue runs in a void with hatches of {width} mm, no joint further than {distance} mm").Against(distanceLimit, distance);
        if (look.Lacks(visit.Record.Flue?.EffectivenessConfirmed, out _))
            return look.Missing($"the flue runs in a void, not every joint can be reached, and whether it works is not confirmed");

        FormattableString message = isTooNarrow
            ? (FormattableString)$"the smallest hatch on the flue in a void is {width} mm wide (at least {widthLimit.Min})"
            : $"a joint of the flue in a void is {distance} mm from a hatch (at most {distanceLimit.Max})";
        var verdict = isConfirmed == true
            ? look.Advisory(message).Warn(Cautions.CarbonMonoxide)
            : Hidden(look.Unsafe(message, look.ClassOfEscapingProducts(visit)));
        return isTooNarrow ? verdict.Against(widthLimit, width) : verdict.Against(distanceLimit, distance);
    }

    private static Verdict Hidden(Verdict verdict) => verdict.Warn(Cautions.CarbonMonoxide)
        .Advise("Turn the boiler off with permission until hatches give access to every joint of the flue.");
}
