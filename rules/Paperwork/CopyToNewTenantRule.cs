using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.CopyToNewTenant), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(6)")]
[Title("A new tenant gets a copy of the last landlord's record before moving in")]
[Why("Somebody about to move in knows nothing of the boiler they will sleep near. Regulation 36 has a copy of the last record given to a new tenant before they occupy the premises.")]
[Serves(Part.LandlordDeadline)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.Full, "two dates")]
public sealed class CopyToNewTenantRule : VisitRule
{
    private const string Duty = "the new tenant's copy of the record";

    protected override string SubjectPointer => "/paperwork/copyToNewTenantOn";

    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var givenOn = look.Note(visit.Record.Paperwork?.CopyToNewTenantOn);
        if (look.Note(visit.Record.Paperwork?.NewTenancyStartsOn) is not { } startsOn)
        {
            return givenOn is null
                ? look.NotApplicable($"no new tenancy is recorded")
                : look.Missing($"a new tenant's copy is recorded without the day on which the tenancy starts", "/paperwork/newTenancyStartsOn");
        }

        if (givenOn is { } day)
        {
            return day <= startsOn
                ? look.Pass($"{Duty} was given on {day}, and the tenancy starts on {startsOn}")
                : look.Advisory($"{Duty} was given on {day}, {DayLimits.Days(day.DayNumber - startsOn.DayNumber)} after the tenancy started on {startsOn}")
                    .Advise("Give the copy before the tenant moves in.");
        }

        return visit.LookedAtOn < startsOn
            ? look.Pass($"{Duty} is due before {startsOn}").DueBy(startsOn.AddDays(-1), Duty)
            : look.Advisory($"{Duty} was due before {startsOn} and is not on record").Advise("Give the copy now and note the day.");
    }
}
