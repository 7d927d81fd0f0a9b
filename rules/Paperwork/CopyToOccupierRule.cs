using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.CopyToOccupier), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(6)"), Cites("GSIUR-1998", "36(7)")]
[Title("Each existing tenant gets a copy of the landlord's record within 28 days of the check")]
[Why("Tenants live with the boiler and can act only on a fault they have been told about. Regulation 36 gives the landlord 28 days from the check to let each existing tenant have a copy.")]
[Serves(Part.LandlordDeadline)]
[Uses(LimitIds.CopyToOccupierDays)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayOverReport, "the length of a stay is no member")]
public sealed class CopyToOccupierRule : VisitRule
{
    protected override string SubjectPointer => "/paperwork/copyToOccupierOn";

    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var givenOn = look.Note(visit.Record.Paperwork?.CopyToOccupierOn);
        if (givenOn is null && look.Note(visit.Record.Paperwork?.DisplayedInsteadOfCopy) == true)
            return Displayed(visit, look);

        return look.Within("the tenant's copy of the record", "Give each tenant a copy of the record and note the day.",
            visit.Limits[LimitIds.CopyToOccupierDays], visit.Date, givenOn, visit);
    }

    // Displaying serves where no appliance stands in a room that the tenant occupies, or for a stay under 28 days.
    private static Verdict Displayed(Visit visit, Look look) =>
        look.Note(visit.Record.Premises?.RoomIsLivingSpace) == false & look.Note(visit.Record.Premises?.RoomIsSleeping) == false
            ? look.Pass($"the record is displayed in place of a copy, and the appliance stands in no room that is lived or slept in")
            : look.Advisory($"the record is displayed in place of a copy, which serves only for a stay under 28 days or where no appliance stands in the tenant's room")
                .Advise("Give each tenant a copy unless the stay is so short that displaying the record serves.");
}
