using Findings;
using Kernel;
using Rules.AmbientAir;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.VentKind), Topic(Topics.Ventilation), Cites("BS-5440", "2")]
[Title("Vents that the boiler needs cannot be closed and have no gauze")]
[Why("A vent that can be closed gets closed on the first cold night, and gauze fills with dust and fluff. The boiler then runs short of air although there is a vent in the wall.")]
[Serves(Part.Air)]
[Uses(LimitIds.AmbientCo)]
[AppliesBy("/appliance/flueType", "/ventilation/compartment", "/appliance/condensing")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class VentKindRule : VisitRule
{
    protected override string SubjectPointer => "/ventilation";

    protected override bool? Applies(Visit visit) => visit.IsOpenFlued | visit.NeedsCompartmentVents();

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Ventilation?.Closable, out var closable) | look.Lacks(visit.Record.Ventilation?.Gauze, out var gauze))
        {
            return visit.Record.Ventilation?.Closable == true ? Closable(visit, look) : look.Missing();
        }

        if (closable)
            return Closable(visit, look);

        return gauze
            ? look.Advisory($"a vent has gauze, which clogs").Warn(Cautions.CarbonMonoxide).Advise("Fit vents without gauze.")
            : look.Pass($"the vents cannot be closed and have no gauze");
    }

    private static Verdict Closable(Visit visit, Look look) =>
        (visit.IsOpenFlued == true ? look.Unsafe($"a vent that feeds an open-flued boiler can be closed", look.ClassOfEscapingProducts(visit)) : look.Advisory($"a vent can be closed"))
            .Warn(Cautions.CarbonMonoxide).Advise("Fit vents that cannot be closed.");
}
