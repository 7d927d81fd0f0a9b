using System.Globalization;
using Findings;

namespace Rules.Tests;

/// <summary>
/// Duties that run on after the visit, seen from a later day: GSIUR 1998 regulation 36(6), Building Regulations 2010 regulation 20(3),
/// RIDDOR 2013 regulation 11(2). The visit is of 14 September 2026.
/// </summary>
public sealed class DeadlineTests
{
    private const string Reportable = """{ "description": "x", "class": "atRisk", "cause": "design", "mechanism": "gasLeak", "reportable": { "decision": "#", "knownOn": "2026-09-14" } }""";

    public static TheoryData<string, string, string> Duties => new()
    {
        { RuleIds.CopyToOccupier, """{ "/premises/use": "rented" }""", "2026-10-12" },
        { RuleIds.CopyToNewTenant, """{ "/premises/use": "rented", "/paperwork/newTenancyStartsOn": "2026-10-01" }""", "2026-09-30" },
        { RuleIds.BuildingCertificate, """{ "/commissioning/newBoiler": true }""", "2026-10-14" },
        { RuleIds.AuthorityNotified, """{ "/commissioning/newBoiler": true }""", "2026-10-14" },
        { RuleIds.ReportInTime, $$"""{ "/defects/-": {{Reportable.Replace("#", "yes", StringComparison.Ordinal)}} }""", "2026-09-28" },
        { RuleIds.ReportDecided, $$"""{ "/defects/-": {{Reportable.Replace("#", "undecided", StringComparison.Ordinal)}} }""", "2026-09-28" },
    };

    [Theory]
    [MemberData(nameof(Duties))]
    public void A_duty_is_due_to_the_end_of_its_last_day_and_late_from_the_next(string ruleId, string set, string last)
    {
        var record = RuleSet.Example(set);
        var lastDay = DateOnly.ParseExact(last, "yyyy-MM-dd", CultureInfo.InvariantCulture);

        var inTime = RuleSet.Engine.Evaluate(record, lookedAtOn: lastDay);
        var late = RuleSet.Engine.Evaluate(record, lookedAtOn: lastDay.AddDays(1));

        Assert.Equal(Outcome.Pass, Assert.Single(RuleSet.AnswersOf(ruleId, inTime)).Outcome);
        Assert.Equal(lastDay, Assert.Single(inTime.Due, item => item.RuleId == ruleId).By);
        Assert.Equal(Outcome.Advisory, Assert.Single(RuleSet.AnswersOf(ruleId, late)).Outcome);
        Assert.DoesNotContain(late.Due, item => item.RuleId == ruleId);
    }
}
