using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Ventilation;

[Id(RuleIds.CompartmentVentLabel), Topic(Topics.Ventilation), Cites("BS-5440", "2")]
[Title("The vents of a boiler compartment carry a notice against blocking")]
[Why("Boiler cupboards fill up with coats and boxes, and decorators paint vents shut. A notice on the vent reaches whoever is about to cover it, long after the person the engineer spoke to has moved out.")]
[Serves(Part.Air, AtMost = Weight.Should)]
[AppliesBy("/ventilation/compartment", "/appliance/flueType", "/appliance/condensing")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class CompartmentVentLabelRule : VisitRule
{
    protected override string SubjectPointer => "/ventilation";

    protected override bool? Applies(Visit visit) => visit.NeedsCompartmentVents();

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Ventilation?.Labelled, out var labelled))
            return look.Missing();

        return labelled
            ? look.Pass($"the vents of the compartment are labelled")
            : look.Advisory($"the vents of the compartment carry no notice against blocking").Advise("Fix a notice that the vents must not be blocked.");
    }
}
