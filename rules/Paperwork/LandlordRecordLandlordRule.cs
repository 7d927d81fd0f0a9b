using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.LandlordRecordLandlord), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)")]
[Title("The landlord's record gives name and address of the landlord or the agent")]
[Why("Repairs to a let boiler are the landlord's to order, so a defect has to reach a person at an address. By law the record gives the landlord's name and address or, where appropriate, the agent's.")]
[Serves(Part.LandlordItems)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class LandlordRecordLandlordRule : VisitRule
{
    protected override string SubjectPointer => "/paperwork";

    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Paperwork?.LandlordName, out var hasName) | look.Lacks(visit.Record.Paperwork?.LandlordAddress, out var hasAddress))
            return look.Missing();

        return hasName && hasAddress
            ? look.Pass($"the paper carries name and address of the landlord or the agent")
            : look.Advisory($"by the record the paper does not carry name and address of the landlord or the agent").Advise(Statements.Complete);
    }
}
