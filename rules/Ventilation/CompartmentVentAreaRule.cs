using Findings;
using Kernel;
using Records;
using Rules.AmbientAir;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.CompartmentVentArea), Topic(Topics.Ventilation), Cites("BS-5440", "2")]
[Title("A boiler compartment has a high and a low vent of sufficient area")]
[Why("Shut in a cupboard, a boiler cannot shed its heat unless air enters low and leaves high. Controls and wiring overheat, and an open-flued boiler also runs short of air and can spill.")]
[Serves(Part.Air)]
[Uses(LimitIds.AmbientCo, LimitIds.DomesticScopeInput, LimitIds.CompartmentOpenOutsideHigh, LimitIds.CompartmentOpenOutsideLow,
    LimitIds.CompartmentOpenRoomHigh, LimitIds.CompartmentOpenRoomLow, LimitIds.CompartmentSealedOutside, LimitIds.CompartmentSealedRoom)]
[AppliesBy("/ventilation/compartment", "/appliance/flueType", "/appliance/condensing", "/appliance/ratedInputKw", "/appliance/ratedInputBasis", "/appliance/fuel")]
[Coverage(Coverage.MayUnderReport, "whether both vents open to the same space is no member")]
public sealed class CompartmentVentAreaRule : VisitRule
{
    protected override string SubjectPointer => "/ventilation";

    protected override bool? Applies(Visit visit) => visit.NeedsCompartmentVents() & visit.IsOfDomesticSize();

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.LacksInput(visit, out var own) | look.Lacks(visit.Record.Ventilation?.OpensTo, out var to)
            | look.Lacks(visit.Record.Ventilation?.HighFreeAreaCm2, out var high) | look.Lacks(visit.Record.Ventilation?.LowFreeAreaCm2, out var low))
        {
            return look.Missing($"the vents of the compartment are not fully recorded");
        }

        var isOpenFlued = visit.IsOpenFlued != false;
        if (isOpenFlued && look.Lacks(visit.Record.Ventilation?.OtherOpenFluedNetKw, out _))
            return look.Missing();

        var input = own + (isOpenFlued ? visit.Record.Ventilation!.OtherOpenFluedNetKw!.Value : 0);
        var (highId, lowId) = (isOpenFlued, to) switch
        {
            (true, VentilationOpensTo.Outside) => (LimitIds.CompartmentOpenOutsideHigh, LimitIds.CompartmentOpenOutsideLow),
            (true, _) => (LimitIds.CompartmentOpenRoomHigh, LimitIds.CompartmentOpenRoomLow),
            (_, VentilationOpensTo.Outside) => (LimitIds.CompartmentSealedOutside, LimitIds.CompartmentSealedOutside),
            _ => (LimitIds.CompartmentSealedRoom, LimitIds.CompartmentSealedRoom),
        };
        var highNeed = VentArea.For(visit.Limits[highId], input);
        var lowNeed = VentArea.For(visit.Limits[lowId], input);
        var (limit, area) = highNeed.Allows(high) ? (lowNeed, low) : (highNeed, high);
        FormattableString message = $"the compartment's vents ({to}) have {high} cm2 high (at least {highNeed.Min}) and {low} cm2 low (at least {lowNeed.Min})";

        return (limit.Allows(area) ? look.Pass($"{message}")
            : isOpenFlued ? look.Unsafe(message, look.ClassOfEscapingProducts(visit))
                .Warn(Cautions.CarbonMonoxide).Advise("Fit vents of the missing area, both into the same space.")
            : look.Advisory(message).Warn(Cautions.MakerDecides).Advise("Fit vents of the missing area, unless the maker's instructions ask for less.")).Against(limit, area);
    }
}
