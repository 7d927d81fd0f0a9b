using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.TightnessTestDate), Topic(Topics.Tightness), Cites("GSIUR-1998", "6(6)")]
[Description("A tightness test after the work is not older than the work")]
[Expects("/tightnessTests")]
[Coverage(Coverage.Full, "two dates")]
public sealed class TightnessTestDateRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        look.Note(test.TestedOn);
        var began = visit.Record.StartedAt?.Date ?? visit.Date;
        var day = TightnessEditions.DayOf(test, visit);
        return day >= began
            ? look.Pass($"the test of {day} was made on this visit")
            : look.Missing($"the test of {day} is recorded as made after the work, which began on {began}; it proves nothing of this visit",
                $"{look.Subject}/testedOn")
                .Advise("Test again now.");
    }
}
