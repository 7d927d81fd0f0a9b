using System.Globalization;
using System.Text.Json.Nodes;
using MadeVisits;

namespace WholeRecords.Tests.Properties;

/// <summary>
/// Good values of evidence that a record lacks, each with what closes again what was opened to take it, and only where nothing in the record speaks
/// against it. The values are those of an ordinary boiler (common practice, no source).
/// </summary>
internal static class GoodValues
{
    /// <summary>Each addition: what it is, when it contradicts nothing, and what is written.</summary>
    private static readonly (string What, Func<JsonObject, bool> Fits, string Written)[] Additions =
    [
        ("room CO", Runs, """{"/ambientCo/beforePpm": 0, "/ambientCo/runningPeakPpm": 0, "/ambientCo/afterPpm": 0}"""),
        ("flue by eye", Reached, """{"/flue/visualOk": true}"""),
        ("flue supports", Reached, """{"/flue/supportsOk": true}"""),
        ("flue effective", Runs, """{"/flue/effectivenessConfirmed": true}"""),
        ("whole route", record => Reached(record) && !record.IsTrue("/flue/inVoid"), """{"/flue/wholeRouteSeen": true}"""),
        ("terminal distance", Reached, """{"/flue/terminalClearances": [{"to": "boundaryAlongside", "distanceMm": 900}]}"""),
        ("case seal", record => Runs(record) && IsRoomSealed(record), """{"/flue/caseSealChecked": true, "/flue/caseSealMethod": "touchAndSmoke", "/flue/caseSealOk": true}"""),
        ("flow and spillage", record => Runs(record) && record.Is("/appliance/flueType", "openFlued"), """{"/flue/flowTestPassed": true, "/flue/spillageTestPassed": true, "/flue/fansRunningDuringSpillage": true}"""),
        ("air inlet clear", Reached, """{"/ventilation/airInletClear": true}"""),
        ("vents not blocked", Reached, """{"/ventilation/blocked": false}"""),
        ("vents open to outside", record => Reached(record) && record.Is("/appliance/flueType", "openFlued"), """{"/ventilation/closable": false, "/ventilation/gauze": false}"""),
        ("safe isolation", Worked, """{"/electrical/isolatedSafely": true}"""),
        ("polarity", Worked, """{"/electrical/polarityOk": true}"""),
        ("earth", Worked, """{"/electrical/earthOk": true, "/electrical/earthOhm": 0.2}"""),
        ("fuse", Worked, """{"/electrical/fuseAmps": 3}"""),
        ("main bonding", Reached, """{"/electrical/mainBonding": true}"""),
        ("isolating switch", Reached, """{"/electrical/doublePoleIsolation": true}"""),
        ("insulation", Worked, """{"/electrical/insulationMegohm": 200}"""),
        ("pipework by eye", Reached, """{"/pipework/visualOk": true}"""),
        ("pipework sleeved", Reached, """{"/pipework/sleeved": true}"""),
        ("pipework supported", Reached, """{"/pipework/supported": true}"""),
        ("burner condition", Opened, """{"/burner/condition": "good"}"""),
        ("electrodes", Opened, """{"/burner/electrodesClean": true}"""),
        ("exchanger inspected", Opened, """{"/heatExchanger/inspected": true, "/heatExchanger/deposits": "none"}"""),
        ("relief valve", record => Worked(record) && IsSealed(record), """{"/water/reliefValve": "ok", "/water/reliefDischargeSafe": true}"""),
        ("filling loop", record => Worked(record) && IsSealed(record), """{"/water/fillingLoopDisconnected": true}"""),
        ("cold and hot pressure", record => Runs(record) && IsSealed(record), """{"/water/coldFillBar": 1.2, "/water/hotBar": 1.5}"""),
        ("inhibitor", Worked, """{"/water/inhibitorTested": true, "/water/inhibitorOk": true}"""),
        ("vent and feed", record => Worked(record) && record.Is("/water/systemType", "openVented"), """{"/water/ventAndFeedOpen": true}"""),
        ("trap filled", record => Worked(record) && record.IsTrue("/appliance/condensing"), """{"/condensate/trapRefilled": true}"""),
        ("condensate seen running", record => Runs(record) && record.IsTrue("/appliance/condensing"), """{"/condensate/seenRunning": true}"""),
        ("regulator seal", record => Reached(record) && !record.Is("/gasSupply/meterKind", "none"), """{"/gasSupply/regulatorSealIntact": true}"""),
        ("meter display", record => Reached(record) && !record.Is("/gasSupply/meterKind", "none"), """{"/gasSupply/meterDisplayWorks": true}"""),
        ("operating pressure", record => Runs(record) && IsNatural(record), """{"/gasSupply/applianceInletMbar": 20.1, "/gasSupply/pressureBy": "nipple", "/gasSupply/testPointsClosed": true, "/gasSupply/testPointsLeakChecked": true}"""),
        ("heat input", record => Runs(record) && IsNatural(record) && !record.Is("/gasSupply/meterKind", "none") && Is26Net(record),
            """{"/gasSupply/rate": {"volumeM3": 0.0883, "seconds": 120, "calorificValueMjPerM3": 39.2, "atMaximum": true, "otherAppliancesOff": true, "warmMinutes": 10}}"""),
        ("analyser zeroed", Measured, """{"/combustion/zeroedOutdoors": true}"""),
        ("settled", Measured, """{"/combustion/settledMinutes": 10}"""),
        ("sampling point closed", Measured, """{"/combustion/testPointClosed": true}"""),
        ("air inlet", record => Measured(record) && IsRoomSealed(record), """{"/combustion/airInlet": {"o2Percent": 20.9, "co2Percent": 0}}"""),
        ("analysis", record => Runs(record) && IsNatural(record) && record.IsTrue("/appliance/condensing"), """
            {"/combustion/readings": [
              {"rate": "maximum", "stage": "afterWork", "coPpm": 90, "co2Percent": 9.2, "o2Percent": 4.5, "flueTemperatureC": 58, "airTemperatureC": 18, "loadPercent": 100},
              {"rate": "minimum", "stage": "afterWork", "coPpm": 12, "co2Percent": 8.9, "o2Percent": 5.0, "flueTemperatureC": 52, "airTemperatureC": 18}],
             "/combustion/zeroedOutdoors": true, "/combustion/settledMinutes": 10, "/combustion/testPointClosed": true}
            """),
        ("tightness", record => Reached(record) && IsNatural(record) && record.Is("/appliance/stateOnLeaving", "inUse"), """
            {"/tightnessTests": [{"stage": "afterWork", "edition": "{edition}", "installationVolumeM3": 0.009, "installationVolumeFrom": "measured", "largestPipeMm": 22, "supplyPressureBar": 0.03,
              "safeToTouchChecked": true, "letByPressureMbar": 8, "letByRiseMbar": 0, "letByMinutes": 1, "testPressureMbar": 20.4, "stabilisationMinutes": 1, "durationMinutes": 2, "dropMbar": 0,
              "appliancesConnected": true, "applianceValvesOpen": true, "pipeworkOnlyMovementMbar": 0, "gauge": "electronic", "gaugeResolutionMbar": 0.01, "gasSmell": false}]}
            """),
        ("alarm", record => Reached(record) && !record.IsTrue("/coAlarm/activatedSinceLastVisit"), """{"/coAlarm/present": true, "/coAlarm/tested": true, "/coAlarm/replaceBy": "2035-01-01", "/coAlarm/standard": "EN 50291-1", "/coAlarm/distanceMm": 2000}"""),
        ("signature", _ => true, """{"/paperwork/engineerSigned": true}"""),
        ("address", _ => true, """{"/paperwork/premisesAddressGiven": true}"""),
        ("defects noted or none", _ => true, """{"/paperwork/defectsNotedOrNone": true}"""),
        ("work noted", Worked, """{"/paperwork/workNoted": true}"""),
        ("examination confirmed", record => Runs(record) && record.At("/work/notDone") is not JsonArray { Count: > 0 }, """{"/paperwork/examinationConfirmed": true}"""),
        ("landlord", record => record.Is("/premises/use", "rented"), """{"/paperwork/landlordName": true, "/paperwork/landlordAddress": true}"""),
        ("shut-off at the inlet", Reached, """{"/appliance/shutOffAtInlet": true}"""),
        ("instructions followed", IsNew, """{"/commissioning/instructionsFollowed": true}"""),
        ("instructions left", IsNew, """{"/paperwork/instructionsLeft": true}"""),
        ("interlock", IsNew, """{"/commissioning/interlock": true}"""),
        ("efficiency", IsNew, """{"/commissioning/seasonalEfficiencyPercent": 94}"""),
        ("purged", IsNew, """{"/work/purged": true}"""),
    ];

    private static readonly string[] Devices = ["flameSupervision", "overheatThermostat"];

    /// <summary>What may be added to a record: members that are there already stay as they are.</summary>
    public static IEnumerable<Variant> For(JsonObject record)
    {
        foreach (var (what, fits, written) in Additions.Where(addition => addition.Fits(record)))
        {
            var values = JsonNode.Parse(written.Replace("{edition}", EditionOf(record), StringComparison.Ordinal))!.AsObject();
            if (values.Select(value => value.Key).All(pointer => record.At(pointer) is not null) || values.Any(value => IsSaidNotToBeDone(record, value.Key)))
                continue;
            var changes = values.Where(value => record.At(value.Key) is null).Select(value => new Change(value.Key, value.Value!.DeepClone())).ToList();
            yield return new Variant($"good {what} added", what switch
            {
                "analysis" => [.. Stamped(changes, record), .. WithInstrument(record, "flueGasAnalyser", "FA-GOOD")],
                "tightness" or "operating pressure" => [.. changes, .. WithInstrument(record, "pressureGauge", "PG-GOOD")],
                "earth" or "insulation" => [.. changes, .. WithInstrument(record, "multimeter", "MM-GOOD")],
                _ => changes,
            });
        }

        var devices = record.At("/safetyDevices") as JsonArray ?? [];
        if (Runs(record))
            foreach (var kind in Devices.Where(kind => !devices.Any(device => (string?)device!["kind"] == kind)))
                yield return new Variant("good safety device added", new Change("/safetyDevices/-", new JsonObject { ["kind"] = kind, ["tested"] = true, ["passed"] = true }));
        foreach (var index in Enumerable.Range(0, (record.At("/disturbedJoints") as JsonArray)?.Count ?? 0))
            foreach (var (member, value) in Joint(record, JsonPlaces.Item("/disturbedJoints", index)))
                yield return new Variant($"good joint {member} added", new Change($"{JsonPlaces.Item("/disturbedJoints", index)}/{member}", value));
    }

    private static IEnumerable<(string Member, JsonNode Value)> Joint(JsonObject record, string joint)
    {
        if (record.At(joint + "/condition") is null)
            yield return ("condition", "good");
        if (record.At(joint + "/leakChecked") is null && Runs(record))
            yield return ("leakChecked", true);
        if (record.At(joint + "/leakCheckMethod") is null && record.IsTrue(joint + "/leakChecked") && record.IsTrue(joint + "/carriesGas"))
            yield return ("leakCheckMethod", "fluid");
        if (record.At(joint + "/burnerAlight") is null && record.Is(joint + "/place", "gasValveOutlet") && Runs(record))
            yield return ("burnerAlight", true);
    }

    /// <summary>The readings at the end of the visit, by the analyser that is added, or the one that is there.</summary>
    private static IEnumerable<Change> Stamped(List<Change> changes, JsonObject record)
    {
        var at = DateTimeOffset.Parse(record.At("/finishedAt")!.GetValue<string>(), CultureInfo.InvariantCulture);
        var analyser = (record.At("/instruments") as JsonArray ?? []).FirstOrDefault(one => (string?)one!["kind"] == "flueGasAnalyser")?["serialNumber"] is { } serial ? (string)serial! : "FA-GOOD";
        foreach (var reading in (changes.FirstOrDefault(change => change.Pointer == "/combustion/readings").Value as JsonArray ?? []).Index())
        {
            reading.Item!["instrument"] = analyser;
            reading.Item["takenAt"] = at.AddMinutes(reading.Index - 2).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);
        }

        return changes;
    }

    private static IEnumerable<Change> WithInstrument(JsonObject record, string kind, string serial)
    {
        if ((record.At("/instruments") as JsonArray ?? []).Any(one => (string?)one!["kind"] == kind))
            yield break;
        var day = DateOnly.ParseExact(record.At("/finishedAt")!.GetValue<string>()[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture);
        yield return new Change("/instruments/-", new JsonObject
        {
            ["kind"] = kind,
            ["serialNumber"] = serial,
            ["calibratedOn"] = day.AddMonths(-3).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ["calibrationDueOn"] = day.AddMonths(9).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ["standard"] = kind == "flueGasAnalyser" ? "EN 50379-3" : null,
            ["resolution"] = kind == "pressureGauge" ? 0.01m : null,
        });
    }

    /// <summary>Edition 4 of IGEM/UP/1B is the one in force from September 2026 (from memory).</summary>
    private static string EditionOf(JsonObject record) => string.CompareOrdinal(record.At("/finishedAt")!.GetValue<string>(), "2026-09-01") < 0 ? "3" : "4";

    /// <summary>A value of what the record says was not done would speak against it.</summary>
    private static bool IsSaidNotToBeDone(JsonObject record, string pointer) => (record.At("/work/notDone") as JsonArray ?? [])
        .Any(item => item!["what"] is { } what && ($"{pointer}/".StartsWith($"{what}/", StringComparison.Ordinal) || $"{what}/".StartsWith($"{pointer}/", StringComparison.Ordinal)));

    private static bool Reached(JsonObject record) => !new[] { "noAccess", "noAccessToAppliance", "refused" }.Any(result => record.Is("/work/result", result));

    private static bool Worked(JsonObject record) => Reached(record) && !record.Is("/work/result", "stoppedForDanger");

    private static bool Runs(JsonObject record) =>
        Worked(record) && !record.Is("/work/result", "gasOff") && !record.Is("/work/result", "awaitingParts") && record.Is("/appliance/stateOnLeaving", "inUse");

    private static bool Measured(JsonObject record) => Runs(record) && record.At("/combustion/readings") is JsonArray { Count: > 0 };

    private static bool Opened(JsonObject record) => Worked(record) && record.IsTrue("/heatExchanger/topPlateRemoved");

    private static bool IsNew(JsonObject record) => Runs(record) && record.Is("/jobType", "commissioning");

    private static bool IsSealed(JsonObject record) => record.Is("/water/systemType", "sealed");

    private static bool IsNatural(JsonObject record) => record.Is("/appliance/fuel", "naturalGas");

    private static bool IsRoomSealed(JsonObject record) => FlueType(record).StartsWith("roomSealed", StringComparison.Ordinal);

    private static bool Is26Net(JsonObject record) => record.At("/appliance/ratedInputKw") is JsonValue input && input.GetValue<decimal>() == 26 && record.Is("/appliance/ratedInputBasis", "net") && record.At("/appliance/rangeRatedInputKw") is null;

    private static string FlueType(JsonObject record) => record.At("/appliance/flueType") is JsonValue type ? type.GetValue<string>() : "unknown";
}
