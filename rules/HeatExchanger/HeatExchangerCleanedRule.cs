using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.HeatExchanger;

[Id(RuleIds.HeatExchangerCleaned), Topic(Topics.HeatExchanger), Cites("BS-6798"), CommonPractice]
[Title("A heat exchanger with deposits is cleaned")]
[Why("Deposits narrow the way through the exchanger, hold heat back from the water and can push up CO. Left after they were found, they grow until the next service.")]
[Serves(Part.FireSide)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class HeatExchangerCleanedRule : VisitRule
{
    protected override string SubjectPointer => "/heatExchanger";

    protected override bool? Applies(Visit visit) => visit.IsAnnualService || visit.IsOwedFromBefore(Part.FireSide);

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.HeatExchanger?.Deposits, out var deposits) | look.Lacks(visit.Record.HeatExchanger?.Cleaned, out var cleaned))
            return look.Missing();

        // Heavy deposits are cleaned before the boiler is left, or made known as a defect.
        var asked = deposits == Deposits.Heavy ? visit.AskedUnlessADefect("/heatExchanger/cleaned", "/heatExchanger", Topics.HeatExchanger) : [];
        return cleaned || deposits == Deposits.None
            ? look.Pass($"deposits: {deposits}; cleaned: {cleaned}")
            : look.Advisory($"{deposits} deposits were found on the heat exchanger, and it was not cleaned").AndMissing(asked)
                .Warn(Cautions.MakerDecides).Advise("Clean the fire side as the maker's instructions say, and read the flue again.");
    }
}
