using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.GasJointListed), Topic(Topics.Joints), Cites("GSIUR-1998", "6(6)"), CommonPractice]
[Description("Where the combustion chamber of a condensing boiler was opened, the gas joint that had to be opened for it is listed")]
[Expects("/disturbedJoints"), AppliesBy("/heatExchanger/topPlateRemoved", "/heatExchanger/cleaned", "/appliance/condensing")]
public sealed class GasJointListedRule : VisitRule
{
    protected override string SubjectPointer => "/disturbedJoints";

    // A service or repair is asked whether the chamber was opened; any other job is held to it once it says so.
    protected override bool? Applies(Visit visit) => visit.Appliance.Condensing & (visit.Record.JobType is JobType.AnnualService or JobType.Repair
        ? visit.Record.HeatExchanger?.TopPlateRemoved | visit.Record.HeatExchanger?.Cleaned
        : visit.Record.HeatExchanger?.TopPlateRemoved == true);

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.GasJointsWereDisturbed is not { } listed)
            return look.Missing($"the record does not say which joints were disturbed", "/disturbedJoints");
        if (listed)
            return look.Pass($"a gas joint is among the disturbed joints");
        if (look.Lacks(visit.Record.HeatExchanger?.TopPlateRemoved, out var removed))
            return look.Missing($"the exchanger was cleaned, no gas joint is listed, and the record does not say whether the top plate was off");

        // The burner of a premix boiler sits on the plate and its gas pipe comes off with it.
        return removed
            ? look.Missing($"the top plate was off, and none of the joints listed as disturbed carries gas: the burner does not come out without opening one",
                "/disturbedJoints")
                .Warn(Cautions.EscapingGas).Advise("List the gas joint that was opened, and prove it tight.")
            : look.Advisory($"the exchanger was cleaned with the top plate on, and no gas joint is listed as disturbed")
                .Warn(Cautions.MakerDecides);
    }
}
