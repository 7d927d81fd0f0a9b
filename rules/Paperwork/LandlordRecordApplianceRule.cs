using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.LandlordRecordAppliance), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)")]
[Title("The landlord's record describes the appliance and its flue and says where they are")]
[Why("Some homes hold several gas appliances, and a check that does not say which one, and where, is hard to pin on any of them. Regulation 36 requires a description and the location of each appliance or flue checked.")]
[Serves(Part.LandlordItems)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class LandlordRecordApplianceRule : VisitRule
{
    protected override string SubjectPointer => "/appliance";

    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(visit.Record.Appliance.Maker, out _) | look.Lacks(visit.Record.Appliance.Model, out var model)
            | look.Lacks(visit.Record.Appliance.Location, out var location) | look.Lacks(visit.Record.Appliance.FlueType, out var flue)
                ? look.Missing($"a landlord's record has to describe and place the appliance and its flue")
                : look.Pass($"the record describes the appliance ({model}, {flue}) and places it: {location}");
}
