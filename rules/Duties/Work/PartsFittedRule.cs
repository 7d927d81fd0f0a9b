using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

[Id("parts-fitted"), Title("A part that was fitted shows what was worked on"), Coverage(Coverage.MayUnderReport, "a part of another kind, or of none that is named, shows nothing")]
public sealed class PartsFittedRule : WorkRule
{
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit) =>
        (visit.Record.PartsFitted ?? []).SelectMany((part, index) => TouchedBy(part.Kind, visit)
            .Select(touched => (touched, $"/partsFitted/{index}", $"{WordsOf(part.Kind)} was fitted")));

    private static IEnumerable<TouchedPart> TouchedBy(PartKind? kind, Visit visit) => kind switch
    {
        PartKind.GasValve => [TouchedPart.GasPath, TouchedPart.Electrics],
        PartKind.Injector or PartKind.Regulator or PartKind.Meter or PartKind.GasSeal => [TouchedPart.GasPath],
        PartKind.Pipework => [TouchedPart.Pipework],
        PartKind.Fan => [.. OfTheFireSide(visit), TouchedPart.Electrics],
        PartKind.Burner or PartKind.HeatExchanger or PartKind.Electrode or PartKind.CombustionSeal => OfTheFireSide(visit),
        PartKind.CondensateTrap => [TouchedPart.CondensatePath],
        PartKind.ControlBoard or PartKind.Sensor => [TouchedPart.Electrics, TouchedPart.Controls],
        PartKind.Pump => [TouchedPart.WaterSide, TouchedPart.Electrics],
        PartKind.ExpansionVessel or PartKind.ReliefValve or PartKind.WaterPart => [TouchedPart.WaterSide],
        PartKind.FlueComponent => [TouchedPart.Flue],
        _ => [],
    };

    private static IEnumerable<TouchedPart> OfTheFireSide(Visit visit) =>
        visit.GasComesWithTheFireSide() ? [TouchedPart.CombustionCircuit, TouchedPart.GasPath] : [TouchedPart.CombustionCircuit];

    private static string WordsOf(PartKind? kind) => kind switch
    {
        PartKind.GasValve => "a gas valve",
        PartKind.Injector => "an injector",
        PartKind.Burner => "a burner",
        PartKind.Fan => "a fan",
        PartKind.HeatExchanger => "a heat exchanger",
        PartKind.Electrode => "an electrode",
        PartKind.GasSeal => "a gas seal",
        PartKind.CombustionSeal => "a seal of the combustion circuit",
        PartKind.Sensor => "a sensor",
        PartKind.ControlBoard => "a control board",
        PartKind.Pump => "a pump",
        PartKind.ExpansionVessel => "an expansion vessel",
        PartKind.ReliefValve => "a relief valve",
        PartKind.CondensateTrap => "a condensate trap",
        PartKind.FlueComponent => "a part of the flue",
        PartKind.Regulator => "a regulator",
        PartKind.Meter => "a meter",
        PartKind.Pipework => "gas pipework",
        PartKind.WaterPart => "a part of the water side",
        _ => "a part",
    };
}
