using Kernel;
using Records;
using Visits;
using Wire;

namespace Rules.Duties.Work;

[Id("work-stated"), Title("What the engineer says was worked on was worked on"), Coverage(Coverage.Full, "the record states it")]
public sealed class WorkStatedRule : WorkRule
{
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit) =>
        (visit.Record.Work?.Touched ?? []).Select((part, index) => (part, $"/work/touched/{index}", $"the {Words(part)} was worked on"));

    private static string Words(TouchedPart part) => part switch
    {
        TouchedPart.GasPath => "gas path",
        TouchedPart.CombustionCircuit => "combustion circuit",
        TouchedPart.WaterSide => "water side",
        TouchedPart.CondensatePath => "condensate path",
        TouchedPart.Electrics => "electrical side",
        TouchedPart.Controls => "control side",
        TouchedPart.Flue => "flue",
        TouchedPart.Ventilation => "ventilation",
        TouchedPart.Pipework => "gas pipework",
        _ => WireNames.Of(part),
    };
}
