using RuleModel;

namespace Rules;

/// <summary>The verdict on a pressure or a heat input that is not recorded: asked for, unless what stands for it in law is on record.</summary>
internal static class NotMeasured
{
    public static Verdict NoPressure(this Visit visit, Look look, string what, string pointer) =>
        visit.NotRecorded(look, what, pointer, visit.HeatInputIsRight() == true ? "the heat input is right" : null);

    public static Verdict NoHeatInput(this Visit visit, Look look) =>
        visit.NotRecorded(look, "a heat input that counts", "/gasSupply/rate", visit.HasOperatingPressure() ? "an operating pressure of the appliance is" : null);

    private static Verdict NotRecorded(this Visit visit, Look look, string what, string pointer, string? instead)
    {
        var excuse = instead
            ?? (visit.StatedReason() is { } reason ? $"a reason is stated: {reason}" : visit.CombustionStandsIn() ? "combustion was examined in its place" : null);
        return excuse is null
            ? look.Missing($"{what} is not recorded", pointer)
            : look.Advisory($"{what} is not recorded; {excuse}");
    }
}
