using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.PlantRoomVentArea), Topic(Topics.Ventilation), Cites("BS-6644"), Cites("IGEM-UP-10")]
[Title("A plant room or enclosure of an open-flued boiler above 70 kW has a high and a low vent of sufficient area")]
[Why("Large open-flued burners use a great volume of air, and the plant room has to lose the heat they give off. Too little vent low down starves them of air; too little high up overheats controls and cables.")]
[Serves(Part.Air)]
[Uses(LimitIds.AmbientCo, LimitIds.DomesticScopeInput, LimitIds.PlantRoomHigh, LimitIds.PlantRoomLow, LimitIds.BoilerEnclosureHigh,
    LimitIds.BoilerEnclosureLow)]
[AppliesBy("/appliance/flueType", "/appliance/ratedInputKw", "/appliance/ratedInputBasis", "/appliance/fuel")]
[Coverage(Coverage.MayUnderReport, "use in summer and temperatures are no members")]
public sealed class PlantRoomVentAreaRule : VisitRule
{
    protected override string SubjectPointer => "/ventilation";

    protected override bool? Applies(Visit visit) => visit.IsOpenFlued & !visit.IsOfDomesticSize();

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.LacksInput(visit, out var own) | look.Lacks(visit.Record.Ventilation?.OtherOpenFluedNetKw, out var others) | look.Lacks(visit.Record.Ventilation?.Compartment, out var isEnclosed)
            | look.Lacks(visit.Record.Ventilation?.HighFreeAreaCm2, out var high) | look.Lacks(visit.Record.Ventilation?.LowFreeAreaCm2, out var low))
        {
            return look.Missing($"the vents of the plant room are not fully recorded");
        }

        var highNeed = VentArea.For(visit.Limits[isEnclosed ? LimitIds.BoilerEnclosureHigh : LimitIds.PlantRoomHigh], own + others);
        var lowNeed = VentArea.For(visit.Limits[isEnclosed ? LimitIds.BoilerEnclosureLow : LimitIds.PlantRoomLow], own + others);
        var (limit, area) = highNeed.Allows(high) ? (lowNeed, low) : (highNeed, high);
        FormattableString message = $"the vents have {high} cm2 high (at least {highNeed.Min}) and {low} cm2 low (at least {lowNeed.Min})";

        // These figures stand from memory: a shortfall is told, and is a danger where the record shows products in the room.
        var expected = look.ClassOfEscapingProducts(visit);
        return (limit.Allows(area) ? look.Pass($"{message}")
            : (expected == ExpectedClass.ImmediatelyDangerous ? look.Unsafe(message, expected) : look.Advisory(message))
                .Warn(Cautions.CarbonMonoxide).Advise("Look the areas up in the standard for plant rooms, and fit what is missing.")).Against(limit, area);
    }
}
