using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

[Id("water-and-condensate-opened"), Title("A trap or a filter that was cleaned was opened"), Topic(Topics.Water)]
public sealed class WaterAndCondensateOpenedRule : WorkRule
{
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit)
    {
        if (visit.Record.Condensate?.TrapCleaned == true)
            yield return (TouchedPart.CondensatePath, "/condensate/trapCleaned", "the condensate trap was cleaned");
        if (visit.Record.Water?.FilterCleaned == true)
            yield return (TouchedPart.WaterSide, "/water/filterCleaned", "the filter of the heating system was cleaned");
    }
}
