using System.Globalization;
using System.Text.Json.Nodes;
using MadeVisits;
using Records.Members;

namespace WholeRecords.Tests.Properties;

/// <summary>3. A value that moves towards danger betters nothing.</summary>
/// <param name="length">How much of it.</param>
internal sealed class DangerwardProperty(RunLength length) : IProperty
{
    public static readonly Claim Measured = new("3a", "A measured value that moves towards danger, other members fixed, never betters.");
    public static readonly Claim Seen = new("3b", "A check that turns from good to bad, or a state to a worse one, never betters.");
    public static readonly Claim Background = new("3c", "A raised background value never betters.");

    /// <summary>
    /// Numbers whose danger lies on one side, the steps that way, and where to stop: beyond lies what no instrument shows (common practice, no source). Not here: CO2,
    /// gas volume, pre-charge, spark gap and the pressure of the let-by test, which have a band and so no one way to danger, and for CO2 takes part in the ratio.
    /// </summary>
    private static readonly (Claim Claim, string Pattern, string Steps, decimal Stop)[] Numbers =
    [
        (Measured, "/combustion/readings/*/coPpm", "*1.3 *3 *10", 2000), (Background, "/ambientCo/beforePpm", "+3 +12 +40", 200),
        (Measured, "/ambientCo/afterAiringPpm", "+3 +12 +40", 200), (Measured, "/ambientCo/runningPeakPpm", "+3 +12 +40", 200),
        (Measured, "/ambientCo/roomBehindOpeningPpm", "+3 +12 +40", 200), (Measured, "/ambientCo/afterPpm", "+3 +12 +40", 200),
        (Measured, "/electrical/earthOhm", "*3 *100 *3000", 100_000), (Measured, "/electrical/insulationMegohm", "*0.3 *0.01", 0),
        (Measured, "/electrical/fuseAmps", "+2 +10", 13), (Measured, "/tightnessTests/*/dropMbar", "+0.1 +0.6 +3 +8", 15),
        (Measured, "/tightnessTests/*/letByRiseMbar", "+0.1 +0.6 +3", 10), (Measured, "/tightnessTests/*/pipeworkOnlyMovementMbar", "+0.1 +0.6 +3", 15),
        (Measured, "/tightnessTests/*/durationMinutes", "*0.5", 0), (Measured, "/tightnessTests/*/stabilisationMinutes", "*0.5", 0),
        (Measured, "/combustion/settledMinutes", "*0.3", 0), (Measured, "/combustion/airInlet/o2Percent", "-0.3 -1.5", 15), (Measured, "/combustion/airInlet/co2Percent", "+0.2 +1.5", 5),
        (Measured, "/combustion/readings/*/flueTemperatureC", "+15 +60", 300), (Measured, "/gasSupply/applianceInletMbar", "-1.5 -6", 5),
        (Measured, "/gasSupply/meterStandingMbar", "+6 +20", 75), (Measured, "/ventilation/freeAreaCm2", "*0.7 *0.3 *0", 0),
        (Measured, "/ventilation/highFreeAreaCm2", "*0.7 *0.3 *0", 0), (Measured, "/ventilation/lowFreeAreaCm2", "*0.7 *0.3 *0", 0),
        (Measured, "/ventilation/otherOpenFluedNetKw", "+5 +20", 60), (Measured, "/flue/terminalClearances/*/distanceMm", "*0.8 *0.5 *0.1", 0),
        (Measured, "/flue/terminalHeightMm", "*0.6 *0.1", 0), (Measured, "/flue/hatchWidthMm", "*0.5", 0), (Measured, "/flue/hatchToJointMm", "*3", 10_000),
        (Measured, "/condensate/pipeInternalDiameterMm", "*0.7", 5), (Measured, "/condensate/fallMmPerM", "*0.4", 0), (Measured, "/burner/flameCurrentMicroamps", "*0.5 *0.1", 0),
        (Measured, "/water/hotBar", "+0.8 +2", 6),
    ];

    /// <summary>Checks by the answer that is the bad one.</summary>
    private static readonly string[] BadWhenFalse =
    [
        "/flue/visualOk", "/flue/supportsOk", "/flue/effectivenessConfirmed", "/flue/flowTestPassed", "/flue/spillageTestPassed", "/flue/caseSealOk", "/flue/wholeRouteSeen",
        "/flue/caseSealChecked", "/flue/inspectionHatches", "/electrical/earthOk", "/electrical/polarityOk", "/electrical/isolatedSafely", "/electrical/mainBonding", "/electrical/doublePoleIsolation",
        "/safetyDevices/*/passed", "/safetyDevices/*/tested", "/coAlarm/present", "/coAlarm/tested", "/ventilation/airInletClear", "/ventilation/labelled", "/pipework/visualOk",
        "/pipework/supported", "/pipework/sleeved", "/disturbedJoints/*/leakChecked", "/disturbedJoints/*/burnerAlight", "/gasSupply/testPointsClosed", "/gasSupply/testPointsLeakChecked",
        "/gasSupply/regulatorSealIntact", "/combustion/testPointClosed", "/combustion/zeroedOutdoors", "/water/reliefDischargeSafe", "/water/fillingLoopDisconnected", "/water/inhibitorOk",
        "/water/ventAndFeedOpen", "/condensate/trapRefilled", "/condensate/seenRunning", "/burner/electrodesClean", "/heatExchanger/inspected", "/heatExchanger/methodAllowedByMaker",
        "/appliance/shutOffAtInlet", "/appliance/usedVerifiedSafe", "/work/gaswaysSealed", "/work/purged", "/work/relit", "/escape/gasIsolated", "/defects/*/labelled", "/defects/*/userToldNotToUse",
        "/defects/*/copyLeft", "/defects/*/userSigned", "/paperwork/engineerSigned", "/paperwork/examinationConfirmed", "/paperwork/defectsNotedOrNone", "/paperwork/instructionsLeft",
        "/paperwork/landlordName", "/paperwork/landlordAddress", "/commissioning/instructionsFollowed", "/commissioning/interlock", "/tightnessTests/*/applianceValvesOpen",
        "/tightnessTests/*/safeToTouchChecked",
    ];

    private static readonly string[] BadWhenTrue =
    [
        "/ventilation/blocked", "/ventilation/closable", "/ventilation/gauze", "/pipework/damageOrCorrosion", "/tightnessTests/*/gasSmell", "/appliance/modified",
        "/premises/alteredSinceLastVisit", "/coAlarm/activatedSinceLastVisit", "/premises/roomIsSleeping", "/premises/belowGround",
    ];

    /// <summary>States from good to bad.</summary>
    private static readonly (string Pattern, string[] Worse)[] States =
    [
        ("/heatExchanger/deposits", ["none", "light", "heavy"]), ("/burner/condition", ["good", "damaged"]), ("/disturbedJoints/*/condition", ["good", "unknown", "damaged"]),
        ("/water/reliefValve", ["ok", "passing", "blocked"]), ("/water/reliefValve", ["ok", "passing", "removed"]), ("/defects/*/class", ["other", "atRisk", "immediatelyDangerous"]),
        ("/defects/*/action", ["disconnected", "turnedOff", "none"]), ("/defects/*/permission", ["given", "refused"]), ("/appliance/plateFuel", ["naturalGas", "propane"]), ("/appliance/plateFuel", ["propane", "naturalGas"]),
    ];

    public IReadOnlyList<Claim> Claims { get; } = [Measured, Seen, Background];

    public IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked)
    {
        var places = JsonPlaces.Pointers(one.Json).Where(pointer => one.Json.At(pointer) is JsonValue).ToLookup(pointer => RecordMembers.Find(pointer)?.Pattern ?? "", StringComparer.Ordinal);
        foreach (var (claim, variant) in Moves(one, places).Where(move => length.Takes(one, move.Variant.Words)))
        {
            if (one.With(variant) is not { } said)
                continue;
            asked(claim);
            if (Order.Betters(one.Said, said) is { } better)
                yield return Counterexample.Of(claim, better, one, variant, said);
        }
    }

    private static IEnumerable<(Claim Claim, Variant Variant)> Moves(Base one, ILookup<string, string> places)
    {
        foreach (var (claim, pattern, steps, stop) in Numbers)
            foreach (var place in places[pattern])
                foreach (var value in steps.Split(' ').Select(step => Step(one.Json.At(place)!.GetValue<decimal>(), step, stop)).OfType<decimal>().Distinct())
                    yield return (claim, new Variant($"{pattern} towards danger", new Change(place, value)));
        foreach (var (patterns, bad) in new[] { (BadWhenFalse, false), (BadWhenTrue, true) })
            foreach (var pattern in patterns)
                foreach (var place in places[pattern].Where(place => one.Json.At(place)!.GetValue<bool>() != bad))
                    yield return (Seen, new Variant($"{pattern} = {(bad ? "true" : "false")}", new Change(place, bad)));
        foreach (var (pattern, order) in States)
            foreach (var place in places[pattern])
                foreach (var worse in order.SkipWhile(state => state != one.Json.At(place)!.GetValue<string>()).Skip(1))
                    yield return (Seen, new Variant($"{pattern} = {worse}", new Change(place, worse)));
    }

    /// <summary>Null where the value would not move that way.</summary>
    private static decimal? Step(decimal value, string step, decimal stop)
    {
        var number = decimal.Parse(step[1..], CultureInfo.InvariantCulture);
        var moved = decimal.Round(step[0] switch { '*' => value * number, '+' => value + number, _ => value - number }, 4);
        var goesUp = step[0] == '+' || (step[0] == '*' && number > 1);
        moved = goesUp ? Math.Min(moved, stop) : Math.Max(moved, stop);
        return (goesUp ? moved > value : moved < value) ? moved : null;
    }
}
