using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class InstrumentsOpinions
{
    private const string Instruments = "/instruments";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("analyser-calibrated", c => Each(c.Record.Instruments, Instruments, Only(InstrumentKind.FlueGasAnalyser, one => Analyser(c, one)), Outcome.Missing)),
        ("analyser-standard", c => Each(c.Record.Instruments, Instruments, Only(InstrumentKind.FlueGasAnalyser, Standard), Outcome.Missing)),
        ("analyser-zeroed", c => On("/combustion", Yes(c.Record.Combustion?.ZeroedOutdoors))),
        ("other-instrument-calibrated", c => Each(c.Record.Instruments, Instruments, one => Other(c, one))),
        ("pressure-gauge-calibrated", Gauge),
        ("reading-traceable", c => Each(c.Record.Combustion?.Readings, "/combustion/readings", reading => reading.Stage == WorkStage.BeforeWork ? null : Traceable(c, reading))),
    ];

    private static Func<Instrument, Outcome?> Only(InstrumentKind kind, Func<Instrument, Outcome> judge) =>
        one => one.Kind == kind ? judge(one) : null;

    // Where neither pressure nor rate was examined, everything hangs on the analyser, whatever is said of why.
    private static Outcome Analyser(Case c, Instrument one) =>
        HasRunOut(c, one) && !Examination.PressureExamined(c) && !Examination.HeatInputExamined(c) ? Outcome.Missing : Calibration(c, one);

    private static DateOnly? AYearOn(Case c, Instrument one) => one.CalibratedOn?.AddMonths((int)c.Limit("calibration-months")!.Max!);

    private static bool HasRunOut(Case c, Instrument one) => (one.CalibrationDueOn ?? AYearOn(c, one)) < c.Day();

    private static Outcome Calibration(Case c, Instrument one)
    {
        if (!Given(one.SerialNumber) || one.CalibratedOn > c.Day())
            return Outcome.Missing;

        // Twelve months, or as long as the instrument's maker says: a due date may be his, and nothing shows that it is.
        return (one.CalibrationDueOn ?? one.CalibratedOn) is null ? Outcome.Missing : Pass(!HasRunOut(c, one) && !(AYearOn(c, one) < c.Day()));
    }

    private static Outcome Standard(Instrument analyser) => analyser.Standard is not { } standard
        ? Outcome.Missing
        : Pass(standard.Contains("50379", StringComparison.Ordinal) || standard.Contains("7927", StringComparison.Ordinal));

    private static Outcome? Other(Case c, Instrument one) => one.Kind switch
    {
        InstrumentKind.FlueGasAnalyser or InstrumentKind.PressureGauge => null,
        null => Outcome.Missing,
        _ => Calibration(c, one),
    };

    // No gauge is needed where no test was made and no pressure read.
    private static IEnumerable<Opinion> Gauge(Case c) =>
        Each(c.Record.Instruments, Instruments, Only(InstrumentKind.PressureGauge, one => Calibration(c, one)),
            c.Record.TightnessTests is { Count: 0 } && c.Record.GasSupply is null or { MeterStandingMbar: null, MeterOperatingMbar: null, ApplianceInletMbar: null, BurnerMbar: null } ? Outcome.NotApplicable : Outcome.Missing);

    private static Outcome? Traceable(Case c, CombustionReading reading) =>
        (c.Record.Instruments ?? []).Any(one => one.Kind == InstrumentKind.FlueGasAnalyser && one.SerialNumber is { } serial && serial == reading.Instrument)
            ? Outcome.Pass
            : Outcome.Missing;
}
