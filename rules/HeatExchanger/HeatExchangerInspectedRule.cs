using Findings;
using Kernel;
using Visits;

namespace Rules.HeatExchanger;

[Id(RuleIds.HeatExchangerInspected), Topic(Topics.HeatExchanger), Cites("BS-6798"), CommonPractice]
[Title("The fire side of the heat exchanger is opened and inspected at each annual service")]
[Why("From outside nobody can see deposits, corrosion or failed insulation on the fire side. A boiler may run quietly with its exchanger half blocked until the combustion goes wrong.")]
[Serves(Part.FireSide)]
[Coverage(Coverage.MayOverReport, "some makers let it be inspected without opening")]
public sealed class HeatExchangerInspectedRule : VisitRule
{
    protected override string SubjectPointer => "/heatExchanger";

    protected override bool? Applies(Visit visit) => visit.IsAnnualService || visit.IsOwedFromBefore(Part.FireSide);

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.HeatExchanger?.Inspected, out var inspected) | look.Lacks(visit.Record.HeatExchanger?.TopPlateRemoved, out var opened))
            return look.Missing();

        if (!inspected)
            return NotInspected(look, $"the fire side of the heat exchanger was not inspected at this annual service");

        return opened || look.Note(visit.Record.HeatExchanger?.MethodAllowedByMaker) == true
            ? look.Pass($"the fire side of the heat exchanger was inspected")
            : NotInspected(look, $"the fire side of the heat exchanger was inspected without opening it");
    }

    private static Verdict NotInspected(Look look, FormattableString message) => look.Advisory(message)
        .Warn(Cautions.MakerDecides).Advise("Open the combustion chamber as the maker's instructions say and inspect the fire side.");
}
