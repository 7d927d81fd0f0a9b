using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.TightnessMinutes), Topic(Topics.Tightness), Cites("IGEM-UP-1B", "stabilisation and test period")]
[Title("The pressure is given time to settle, and the test lasts long enough")]
[Why("Warming or cooling gas in the pipe moves the gauge by itself, so the pressure is left to settle before timing starts. A test cut short can end before a small leak has moved the gauge far enough to be seen.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Uses(LimitIds.TightnessStabilisationMinutes, LimitIds.TightnessDurationMinutes)]
[Expects("/tightnessTests")]
[Coverage(Coverage.MayUnderReport, "longer times for boats and caravans are not known")]
public sealed class TightnessMinutesRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        var lacks = look.Lacks(test.StabilisationMinutes, out var settling) | look.Lacks(test.DurationMinutes, out var duration);
        var settlingLimit = visit.Limits[LimitIds.TightnessStabilisationMinutes];
        var durationLimit = visit.Limits[LimitIds.TightnessDurationMinutes];
        if (test.StabilisationMinutes is not null && !settlingLimit.Allows(settling))
        {
            return look.Missing($"the pressure was left to settle for {settling} min, less than {settlingLimit.Min} min",
                $"{look.Subject}/stabilisationMinutes")
                .Against(settlingLimit, settling).Advise("Repeat the test.");
        }

        if (test.DurationMinutes is not null && !durationLimit.Allows(duration))
        {
            return look.Missing($"the test lasted {duration} min, less than {durationLimit.Min} min", $"{look.Subject}/durationMinutes")
                .Against(durationLimit, duration).Advise("Repeat the test.");
        }

        return lacks
            ? look.Missing()
            : look.Pass($"{settling} min to settle and {duration} min of test, at least {settlingLimit.Min} and {durationLimit.Min} min")
                .Against(durationLimit, duration);
    }
}
