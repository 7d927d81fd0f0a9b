using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

[Id("new-boiler-fitted"), Title("With a new boiler everything that it is joined to was worked on"), Coverage(Coverage.MayOverReport, "an installation that does not say whether the boiler is new counts as one of a new boiler")]
public sealed class NewBoilerFittedRule : WorkRule
{
    private static readonly TouchedPart[] Everything =
        [TouchedPart.GasPath, TouchedPart.CombustionCircuit, TouchedPart.Flue, TouchedPart.CondensatePath, TouchedPart.WaterSide, TouchedPart.Electrics];

    // A job of commissioning that does not say whether the boiler is new is one of a new boiler.
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit) =>
        visit.FittedANewBoiler != false && !visit.HadNoAccess && !visit.IsAnInstallationPutOff() ? Everything.Select(part => (part, "/commissioning/newBoiler", "a new boiler was fitted")) : [];
}
