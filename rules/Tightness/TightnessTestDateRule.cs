using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.TightnessTestDate), Topic(Topics.Tightness), Cites("GSIUR-1998", "6(6)")]
[Title("A tightness test after the work is not older than the work, nor long before the end of the visit")]
[Why("Tested before a joint was opened, pipework says nothing about the joint as it was put back. The law asks for the test immediately after the work, so an earlier result cannot stand in for it.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Uses(LimitIds.VisitDays)]
[Expects("/tightnessTests")]
[Coverage(Coverage.Full, "two dates")]
public sealed class TightnessTestDateRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        look.Note(test.TestedOn);
        var began = visit.Record.StartedAt?.Date ?? visit.Date;
        var day = TightnessEditions.DayOf(test, visit);
        if (day < began)
            return ProvesNothing($"the test of {day} is recorded as made after the work, which began on {began}; it proves nothing of this visit");

        return visit.DaysBeforeItCounts(day) is { } days
            ? ProvesNothing($"the test of {day} was made {DayLimits.Days(days)} before the visit ended; it does not prove how the work left the joints")
            : look.Pass($"the test of {day} was made on this visit");

        Verdict ProvesNothing(FormattableString message) => look.Missing(message, $"{look.Subject}/testedOn").Advise("Test again now.");
    }
}
