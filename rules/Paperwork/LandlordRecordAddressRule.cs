using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.LandlordRecordAddress), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)")]
[Title("The landlord's record gives the address of the premises")]
[Why("With no address a landlord's record could belong to any home that the landlord lets. The address is required by regulation 36, and a tenant cannot rely on a check of a place that is not named.")]
[Serves(Part.LandlordItems)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class LandlordRecordAddressRule : StatementRule
{
    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Paperwork?.PremisesAddressGiven, out var isGiven) ? look.Missing() : Stated(isGiven, "the address of the premises", look);
}
