using Findings;
using Kernel;
using Visits;

namespace Rules.Water;

[Id(RuleIds.InhibitorTested), Topic(Topics.Water), Cites("BS-7593")]
[Title("Inhibitor and cleanliness of the system water are tested every year and in order")]
[Why("Leaks and topping up dilute inhibitor, and the look of the water does not show how much is left. Unprotected radiators corrode, and the sludge ends up in the pump and the heat exchanger.")]
[Serves(Part.Water)]
[InForce(From = "2019-06-01")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class InhibitorTestedRule : WaterRule
{
    protected override string SubjectPointer => "/water/inhibitorTested";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Water?.InhibitorTested, out var isTested))
            return look.Missing();
        if (!isTested)
            return look.Advisory($"the inhibitor was not tested at this visit").Advise("Test inhibitor and cleanliness of the water every year.");
        if (look.Lacks(visit.Record.Water?.InhibitorOk, out var isOk))
            return look.Missing($"the inhibitor was tested, and the result is not recorded");

        return isOk
            ? look.Pass($"the inhibitor was tested and in order")
            : look.Advisory($"the inhibitor was tested and is not in order")
                .Advise("Clean the system where needed and dose inhibitor by its maker's instructions.");
    }
}
