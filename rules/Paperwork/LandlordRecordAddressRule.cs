using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Paperwork;

[Name(RuleIds.LandlordRecordAddress), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)")]
[Description("The landlord's record gives the address of the premises")]
[AppliesBy("/premises/use")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class LandlordRecordAddressRule : StatementRule
{
    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.PremisesAddressGiven, out var isGiven) ? look.Missing() : Stated(isGiven, "the address of the premises", look);
}
