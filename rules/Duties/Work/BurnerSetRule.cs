using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

/// <remarks>By what an analyser of the usual accuracy can tell apart: 0.3 % of carbon dioxide (common practice, no source).</remarks>
[Id("burner-set"), Title("Flue readings that differ before and after the work show that the burner was set"), Topic(Topics.Combustion), Coverage(Coverage.MayUnderReport, "a setting that moves the readings by less than an analyser tells apart is not seen")]
public sealed class BurnerSetRule : WorkRule
{
    private const decimal Distinguishable = 0.3m;

    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit)
    {
        foreach (var (pointer, after) in visit.ReadingsAfterWork ?? [])
        {
            if (visit.Readings!.Any(before => before.Value.Stage == WorkStage.BeforeWork && before.Value.Rate == after.Rate
                && before.Value.Co2Percent is { } was && after.Co2Percent is { } isNow && Math.Abs(isNow - was) > Distinguishable))
            {
                yield return (TouchedPart.CombustionCircuit, pointer, "the flue readings before and after the work differ");
            }
        }
    }
}
