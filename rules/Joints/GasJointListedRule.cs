using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.GasJointListed), Topic(Topics.Joints), Cites("GSIUR-1998", "6(6)"), CommonPractice]
[Title("Where the combustion chamber of a condensing boiler was opened or a new boiler was connected, the gas joint that had to be made for it is listed")]
[Why("As a rule the burner of a premix boiler comes out with its gas pipe, and every new boiler has a gas connection made on site. A gas joint that nobody lists is one that nobody tests.")]
[Serves(Part.GasJoints)]
[Serves(Part.FireSideDetails, AtMost = Weight.Should, Of = "/heatExchanger/topPlateRemoved")]
[Serves(Part.FireSideDetails, AtMost = Weight.Should, Of = "/heatExchanger/cleaned")]
[Expects("/disturbedJoints"), AppliesBy("/heatExchanger/topPlateRemoved", "/heatExchanger/cleaned", "/appliance/condensing")]
[Coverage(Coverage.MayOverReport, "some burners come out without opening a gas joint")]
public sealed class GasJointListedRule : VisitRule
{
    protected override string SubjectPointer => "/disturbedJoints";

    // A service or repair is asked whether the chamber was opened; any other job is held to it once it says so. A new boiler has its gas connection.
    protected override bool? Applies(Visit visit) => visit.FittedANewBoiler != false ? true : visit.Appliance.Condensing & (visit.Record.JobType is JobType.AnnualService or JobType.Repair
        ? visit.Record.HeatExchanger?.TopPlateRemoved | visit.Record.HeatExchanger?.Cleaned
        : visit.Record.HeatExchanger?.TopPlateRemoved == true);

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (visit.GasJointsWereDisturbed is not { } listed)
            return look.Missing($"the record does not say which joints were disturbed", "/disturbedJoints");
        if (listed)
            return look.Pass($"a gas joint is among the disturbed joints");
        if (visit.IsNewBoiler != false && visit.Record.HeatExchanger?.TopPlateRemoved != true)
            return WithANewBoiler(visit, look);
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

    private static Verdict WithANewBoiler(Visit visit, Look look)
    {
        var verdict = look.Lacks(visit.Record.Commissioning?.NewBoiler, out _)
            ? look.Missing($"no gas joint is listed, and the record does not say whether the boiler is new, which none is without making one")
            : look.Missing($"the boiler is new, and none of the joints listed as disturbed carries gas: no boiler is connected without making one", "/disturbedJoints");
        return verdict.Warn(Cautions.EscapingGas).Advise("List the gas joints that were made, and prove them tight.");
    }
}
