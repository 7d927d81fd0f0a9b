using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class PlausibilityOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("appliance-modified", c => On("/appliance/modified", Modified(c))),
        ("flow-above-return", c => On("/water", c.Record.Water?.FlowTemperatureC - c.Record.Water?.ReturnTemperatureC is { } rise ? Pass(rise >= 0) : Outcome.Missing)),
        ("plate-fuel", c => On("/appliance/plateFuel", PlateFuel(c))),
        ("pressure-finer-than-gauge", c => On("/gasSupply", Pressures(c))),
        ("tightness-finer-than-gauge", c => Each(c.Record.TightnessTests, "/tightnessTests", Test)),
        ("tightness-test-dated", c => Each(c.Record.TightnessTests, "/tightnessTests", test => test.TestedOn > c.Day() ? Outcome.Missing : Outcome.Pass)),
        ("visit-long-enough", c => If(c.Record.JobType == JobType.AnnualService, "", () => LongEnough(c))),
    ];

    private static Outcome Modified(Case c) => c.Record.Appliance.Modified switch
    {
        null => Outcome.Missing,
        false => Outcome.Pass,
        true => Given(c.Record.MakerLimits?.DecisionReference) ? Outcome.Advisory : Outcome.Unsafe,
    };

    private static Outcome PlateFuel(Case c)
    {
        var appliance = c.Record.Appliance;
        return appliance.PlateFuel is not { } plate || appliance.Fuel is null ? Outcome.Missing
            : plate == appliance.Fuel ? Outcome.Pass
            : c.Record.PartsFitted?.Any(part => part.ForFuel == appliance.Fuel) == true ? Outcome.Advisory
            : Outcome.Unsafe;
    }

    // The finest listed gauge must be able to show every pressure; which one was used is not recorded.
    private static Outcome Pressures(Case c)
    {
        if (c.Record.Instruments is not { } instruments)
            return Outcome.Missing;

        var step = instruments.Where(one => one is { Kind: InstrumentKind.PressureGauge, Resolution: > 0 }).Min(gauge => gauge.Resolution);
        var supply = c.Record.GasSupply;
        return Pass(step is { } finest && new[] { supply?.MeterStandingMbar, supply?.MeterOperatingMbar, supply?.ApplianceInletMbar, supply?.BurnerMbar }
            .All(pressure => IsShown(pressure, finest)));
    }

    private static Outcome? Test(TightnessTest test) => test switch
    {
        { Gauge: PressureGaugeKind.Water } => Outcome.NotApplicable,
        { Gauge: null } or { GaugeResolutionMbar: null } => Outcome.Missing,
        _ => Pass(new[] { test.LetByPressureMbar, test.LetByRiseMbar, test.TestPressureMbar, test.DropMbar, test.PipeworkOnlyMovementMbar }
            .All(pressure => IsShown(pressure, test.GaugeResolutionMbar.Value))),
    };

    private static bool IsShown(decimal? value, decimal step) => value is null || value % step == 0;

    // The exchanger's work and the run before the reading follow one another.
    private static Outcome LongEnough(Case c)
    {
        var minutes = c.Record.HeatExchanger?.MinutesSpent + c.Record.Combustion?.SettledMinutes;
        return c.Record.StartedAt is { } start && minutes is { } work
            ? Pass((decimal)(c.Record.FinishedAt.Value - start.Value).Ticks >= work * TimeSpan.TicksPerMinute)
            : Outcome.Missing;
    }
}
