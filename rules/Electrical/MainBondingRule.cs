using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Electrical;

[Id(RuleIds.MainBonding), Topic(Topics.Electrical), CommonPractice]
[Title("Main bonding of the gas pipe is looked for, and its absence told to the customer")]
[Why("During an electrical fault an unbonded gas pipe can be at a different voltage from other metalwork, and touching both gives a shock. The gas engineer reports it and an electrician decides what is needed.")]
[Serves(Part.Electrics)]
[Coverage(Coverage.MayOverReport, "plastic services may need none, which an electrician decides")]
public sealed class MainBondingRule : VisitRule
{
    protected override string SubjectPointer => "/electrical";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Electrical?.MainBonding, out var bonded))
            return look.Missing();

        return bonded
            ? look.Pass($"main bonding of the gas pipe was seen")
            : look.Advisory($"no main bonding of the gas pipe was seen; whether it is needed is for an electrician, and plastic services may need none")
                .Warn(Cautions.ElectricShock).Advise("Tell the customer in writing to have the bonding looked at by an electrician.");
    }
}
