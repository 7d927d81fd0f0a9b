namespace MadeVisits;

/// <summary>
/// What can be dangerous about a boiler and its installation. Each is so bad that no limit leaves it open: a case leaks products only where it is under positive
/// pressure, and gas leaks faster than any meter's permitted drop, with a smell.
/// </summary>
public enum DangerKind
{
    BurnsBadly,
    OpenFlueSpills,
    FlueLeaksIntoItsAir,
    FlueNotSound,
    TerminalTooNear,
    CaseLeaks,
    GasLeaksAtTheBoiler,
    GasLeaksAboveTheValve,
    FlameSupervisionFails,
    NoEarth,
    VentBlocked,
    CarbonMonoxideInTheRoom,
    ReliefValvePlugged,
}

/// <summary>One kind of danger: where it can be, how it shows, and how it is dealt with.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Class">immediatelyDangerous or atRisk, as the trade would mostly class it (common practice, no source).</param>
/// <param name="Topic">Topic of its defect.</param>
/// <param name="Subject">Where the record shows it.</param>
/// <param name="Mechanism">Of the reporting decision.</param>
/// <param name="SeenBy">What has to be examined to find it.</param>
/// <param name="IsolatedAt">Where it is isolated.</param>
/// <param name="Says">As an engineer would write it.</param>
/// <param name="Share">How often among dangers, in parts (common practice, no source).</param>
/// <param name="Fits">Whether such a boiler can have it.</param>
/// <param name="Makes">The condition with it.</param>
internal sealed record Danger(
    DangerKind Kind,
    string Class,
    string Topic,
    string Subject,
    string Mechanism,
    Aspect SeenBy,
    string IsolatedAt,
    string Says,
    int Share,
    Func<Boiler, bool> Fits,
    Func<Condition, Dice, Condition> Makes)
{
    /// <summary>Whether a later measurement shows by itself that it was put right: a test by its stage, a reading by its time. Then nothing else is owed of the second look.</summary>
    public bool IsMeasuredAgain => SeenBy is Aspect.Combustion or Aspect.Tightness;

    public static IReadOnlyList<Danger> All { get; } =
    [
        new(DangerKind.BurnsBadly, "atRisk", "combustion", "/combustion/readings/0", "incompleteCombustion", Aspect.Combustion, "applianceValve", "Burns badly at maximum rate", 22,
            _ => true, (good, dice) => good with { CoPpmMaximum = good.Co2PercentMaximum * 10_000 * dice.Between(0.0095m, 0.018m), CoPpmMinimum = dice.Between(100, 400), Deposits = "heavy" }),
        new(DangerKind.OpenFlueSpills, "immediatelyDangerous", "flue", "/flue/spillageTestPassed", "productsNotRemoved", Aspect.FlueFlow, "applianceValve", "Spills at the draught diverter", 8,
            boiler => boiler.FlueType == "openFlued", (good, _) => good with { Spills = true }),
        new(DangerKind.FlueLeaksIntoItsAir, "immediatelyDangerous", "flue", "/combustion/airInlet", "productsNotRemoved", Aspect.AirInlet, "applianceValve", "Flue gas in the air inlet", 5,
            boiler => boiler.FlueType == "roomSealedFanned", (good, dice) => good with { InletCo2Percent = dice.Between(0.6m, 2) }),
        new(DangerKind.FlueNotSound, "immediatelyDangerous", "flue", "/flue/visualOk", "productsNotRemoved", Aspect.Flue, "applianceValve", "Flue has come apart at a joint", 10,
            _ => true, (good, _) => good with { IsFlueSound = false }),
        new(DangerKind.TerminalTooNear, "atRisk", "flue", "/flue/terminalClearances/0", "productsNotRemoved", Aspect.Terminal, "applianceValve", "Terminal right beside an opening", 8,
            boiler => boiler.FlueType != "openFlued", (good, dice) => good with { TerminalMm = dice.Between(30, 90) }),
        new(DangerKind.CaseLeaks, "atRisk", "flue", "/flue/caseSealOk", "productsNotRemoved", Aspect.Case, "applianceValve", "Seal of the case perished", 8,
            boiler => boiler.CasePressure == "positive", (good, _) => good with { IsCaseTight = false }),
        new(DangerKind.GasLeaksAtTheBoiler, "immediatelyDangerous", "tightness", "/tightnessTests/0", "gasLeak", Aspect.Tightness, "applianceValve", "Weep at the inlet union of the gas valve", 10,
            boiler => boiler.Fuel == "naturalGas", (good, dice) => good with { DropMbar = dice.Between(8.5m, 14) }),
        new(DangerKind.GasLeaksAboveTheValve, "immediatelyDangerous", "tightness", "/tightnessTests/0", "gasLeak", Aspect.Tightness, "emergencyControl", "Leak on the pipe before the boiler's valve", 6,
            boiler => boiler.Fuel == "naturalGas", (good, dice) => good with { DropMbar = dice.Between(8.5m, 14), LeaksAboveValve = true }),
        new(DangerKind.FlameSupervisionFails, "immediatelyDangerous", "safetyDevices", "/safetyDevices/0", "other", Aspect.SafetyDevices, "applianceValve", "Gas stays on after the flame is out", 4,
            _ => true, (good, _) => good with { FlameSupervisionWorks = false }),
        new(DangerKind.NoEarth, "atRisk", "electrical", "/electrical/earthOhm", "other", Aspect.Electrics, "electricalSupply", "No earth at the boiler", 7,
            _ => true, (good, dice) => good with { EarthOhm = dice.Between(300, 5000) }),
        new(DangerKind.VentBlocked, "atRisk", "ventilation", "/ventilation/blocked", "productsNotRemoved", Aspect.Ventilation, "applianceValve", "Vent for combustion air taped over", 6,
            boiler => boiler.FlueType == "openFlued", (good, _) => good with { IsVentBlocked = true }),
        new(DangerKind.CarbonMonoxideInTheRoom, "immediatelyDangerous", "ambientAir", "/ambientCo/runningPeakPpm", "productsNotRemoved", Aspect.RoomAir, "otherAppliances", "Carbon monoxide in the room while it runs", 4,
            _ => true, (good, dice) => good with { RoomCoPpm = dice.Between(25, 90) }),
        new(DangerKind.ReliefValvePlugged, "atRisk", "water", "/water/reliefValve", "other", Aspect.Water, "applianceValve", "Discharge of the relief valve plugged", 3,
            boiler => !boiler.IsOpenVented, (good, _) => good with { ReliefValve = "blocked" }),
    ];

    public static Danger Of(DangerKind kind) => All.Single(one => one.Kind == kind);
}
