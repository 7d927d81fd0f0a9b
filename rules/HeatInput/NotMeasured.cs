using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.HeatInput;

/// <summary>The verdict on a pressure or a heat input that is not recorded: asked for, unless what stands for it in law is on record.</summary>
internal static class NotMeasured
{
    // Where a gauge was on the supply, each pressure is asked for: the one left out could be the bad one.
    public static Verdict NoPressure(this Visit visit, Look look, string what, string pointer) => visit.NotRecorded(look, what, pointer,
        visit.HasAnyPressure() ? null : visit.HeatInputIsRight() == true ? "the heat input is right" : visit.CombustionInstead());

    public static Verdict NoHeatInput(this Visit visit, Look look) => visit.NotRecorded(look, "a heat input that counts", "/gasSupply/rate",
        visit.HasOperatingPressure() ? "an operating pressure of the appliance is" : visit.CombustionInstead());

    private static string? CombustionInstead(this Visit visit) => visit.CombustionStandsIn() ? "combustion was examined in its place" : null;

    private static Verdict NotRecorded(this Visit visit, Look look, string what, string pointer, string? instead)
    {
        if (visit.WhyNeither() is { } reason)
            return look.NotApplicable($"{what} could not be had, and combustion was examined in its place: {reason}");

        return instead is null
            ? look.Missing($"{what} is not recorded", pointer)
            : look.Missing($"{what} is not recorded; {instead}", pointer);
    }
}
