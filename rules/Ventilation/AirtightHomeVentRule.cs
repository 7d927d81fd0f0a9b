using Findings;
using Kernel;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.AirtightHomeVent), Topic(Topics.Ventilation), Cites("BUILDING-REGS-2010", "Approved Document J"), Cites("BS-5440", "2")]
[Title("In a very airtight home the vents feed an open flue without counting on leakage")]
[Why("Tight modern walls and windows let in little of the leakage that an older house gives an open flue for nothing. A vent sized with that leakage in mind is then too small, and combustion products can come back into the room.")]
[Serves(Part.Air)]
[Serves(Part.WhereRecorded, AtMost = Weight.Should, Of = "/premises/airPermeabilityM3PerHM2")]
[Uses(LimitIds.DomesticScopeInput, LimitIds.OpenFlueVentPerKw, LimitIds.InnerRoomShare, LimitIds.AirtightHome)]
[AppliesBy("/appliance/flueType", "/ventilation/compartment", "/appliance/ratedInputKw", "/appliance/ratedInputBasis", "/appliance/fuel")]
[Coverage(Coverage.Full, "Approved Document J, Diagram 32: without the 7 kW that a home which leaks is allowed")]
public sealed class AirtightHomeVentRule : VisitRule
{
    protected override string SubjectPointer => "/premises";

    protected override bool? Applies(Visit visit) => visit.BreathesFromARoom() & visit.IsOfDomesticSize();

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Premises?.AirPermeabilityM3PerHM2, out var permeability))
            return look.Missing($"how airtight the home is, is not recorded; in a very airtight one leakage does not feed an open flue").Warn(Cautions.CarbonMonoxide);

        var airtight = visit.Limits[LimitIds.AirtightHome];
        if (!airtight.Allows(permeability))
            return look.Pass($"the home leaks {permeability} m3 an hour for each m2, more than {airtight.Max}: leakage counts");
        if (look.LacksInput(visit, out var own) | look.LacksOpening(visit) | look.Lacks(visit.Record.Ventilation?.OtherOpenFluedNetKw, out var others)
            | look.Lacks(visit.Record.Ventilation?.FreeAreaCm2, out var area) | look.Lacks(visit.Record.Ventilation?.ThroughInnerRooms, out var through))
        {
            return look.Missing();
        }

        var needed = VentArea.For(visit.Limits[LimitIds.OpenFlueVentPerKw], own + others, VentArea.ShareOf(visit, through));
        return needed.Allows(area)
            ? look.Pass($"the home is very airtight, and the vents of {area} cm2 feed the open flues without leakage").Against(needed, area)
            : look.Advisory($"the home is very airtight ({permeability}), and its open flues of {own + others} kW net need {needed.Min} cm2 of vents: there are {area}")
                .Against(needed, area).Warn(Cautions.CarbonMonoxide).Advise("Fit vents for the whole input: in a home this airtight none of it is fed by leakage.");
    }
}
