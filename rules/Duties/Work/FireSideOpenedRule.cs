using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

[Id("fire-side-opened"), Title("A fire side that was opened, cleaned or gauged was worked on"), Topic(Topics.HeatExchanger)]
public sealed class FireSideOpenedRule : WorkRule
{
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit)
    {
        var (pointer, words) = visit.Record switch
        {
            { HeatExchanger.TopPlateRemoved: true } => ("/heatExchanger/topPlateRemoved", "the top plate was taken off"),
            { HeatExchanger.Cleaned: true } => ("/heatExchanger/cleaned", "the heat exchanger was cleaned"),
            { Burner.ElectrodeGapMm: not null } => ("/burner/electrodeGapMm", "the electrode gap was measured"),
            _ => (null, ""),
        };
        if (pointer is null)
            yield break;

        yield return (TouchedPart.CombustionCircuit, pointer, words);
        if (visit.Record.HeatExchanger?.TopPlateRemoved == true && visit.GasComesWithTheFireSide())
            yield return (TouchedPart.GasPath, pointer, words);
    }
}
