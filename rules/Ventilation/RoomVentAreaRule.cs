using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.RoomVentArea), Topic(Topics.Ventilation), Cites("BS-5440", "2"), Cites("GSIUR-1998", "26(9)(b)")]
[Title("The room that feeds an open-flued boiler with air, through a compartment too, has vents enough for all open flues in it")]
[Why("All open flues in a room draw on the same air, and leakage round doors and windows is enough for a small input only. With too little vent, combustion products can turn back from the flue into the room.")]
[Serves(Part.Air)]
[Uses(LimitIds.AmbientCo, LimitIds.DomesticScopeInput, LimitIds.OpenFlueVentPerKw, LimitIds.LeakageInput, LimitIds.InnerRoomShare,
    LimitIds.VentAreaShare)]
[AppliesBy("/appliance/flueType", "/ventilation/compartment", "/appliance/ratedInputKw", "/appliance/ratedInputBasis", "/appliance/fuel")]
[Coverage(Coverage.MayUnderReport, "the figures are of an edition before that of 2023")]
public sealed class RoomVentAreaRule : VisitRule
{
    protected override string SubjectPointer => "/ventilation";

    protected override bool? Applies(Visit visit) => visit.BreathesFromARoom() & visit.IsOfDomesticSize();

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.LacksInput(visit, out var own) | look.LacksOpening(visit) | look.Lacks(visit.Record.Ventilation?.OtherOpenFluedNetKw, out var others)
            | look.Lacks(visit.Record.Ventilation?.FreeAreaCm2, out var area) | look.Lacks(visit.Record.Ventilation?.ThroughInnerRooms, out var through))
        {
            return look.Missing($"what feeds the open flue with air is not fully recorded");
        }

        var needed = VentArea.For(visit.Limits[LimitIds.OpenFlueVentPerKw], own + others - visit.Limits[LimitIds.LeakageInput].Max!.Value, VentArea.ShareOf(visit, through));
        if (needed.Allows(area))
            return look.Pass($"the vents have {area} cm2, and {own + others:0.0} kW of open flues need {needed.Min}").Against(needed, area);

        FormattableString message = $"the vents have {area} cm2, and {own + others:0.0} kW of open flues need {needed.Min}";
        var expected = look.ClassOfEscapingProducts(visit);
        var isNearlyEnough = visit.Limits[LimitIds.VentAreaShare].Allows(100 * area / needed.Min!.Value);
        return (isNearlyEnough && expected == ExpectedClass.AtRisk ? look.Advisory(message) : look.Unsafe(message, expected))
            .Against(needed, area).Warn(Cautions.CarbonMonoxide).Advise("Fit vents of the missing area that cannot be closed, and test for spillage again.");
    }
}
