using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Paperwork;

[Name(RuleIds.LandlordRecordLandlord), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)")]
[Description("The landlord's record gives name and address of the landlord or the agent")]
[AppliesBy("/premises/use")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class LandlordRecordLandlordRule : StatementRule
{
    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.LandlordName, out var hasName) | look.Lacks(visit.Record.Paperwork?.LandlordAddress, out var hasAddress)
            ? look.Missing()
            : Stated(hasName && hasAddress, "name and address of the landlord or the agent", look);
}
