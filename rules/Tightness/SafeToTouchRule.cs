using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.SafeToTouch), Topic(Topics.Tightness), Cites("IGEM-UP-1B", "Edition 4")]
[Title("Exposed metal pipework is proved free of voltage before a tightness test")]
[Why("An electrical fault can put mains voltage on metal gas pipework, and the first hand on the pipe completes the path to earth. The sweep comes before the test because connecting the gauge means handling that metal.")]
[Serves(Part.Tightness, AtMost = Weight.Should)]
[Serves(Part.LandlordPipework, AtMost = Weight.Should)]
[Expects("/tightnessTests")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class SafeToTouchRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        if (TightnessEditions.Governing(test.Edition, TightnessEditions.DayOf(test, visit)) == TightnessEditions.Third)
            return look.NotApplicable($"edition 3 does not ask for it");
        if (look.Lacks(test.SafeToTouchChecked, out var wasChecked))
            return look.Missing();

        return wasChecked
            ? look.Pass($"the pipework was proved free of voltage before the test")
            : look.Advisory($"the pipework was not proved free of voltage before the test")
                .Warn(Cautions.LivePipework).Advise("Sweep the exposed metalwork with a no-contact voltage detector before the next test.");
    }
}
