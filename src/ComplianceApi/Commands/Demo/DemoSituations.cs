using System.Text.Json.Nodes;
using Findings;

namespace ComplianceApi.Commands.Demo;

/// <summary>A situation that the demo month shows, how often, and what the service is to say of it.</summary>
/// <param name="Name">In words.</param>
/// <param name="Count">How often it occurs in the month.</param>
/// <param name="Outcome">What the record is to come out as.</param>
/// <param name="Change">Turns a clean record into it.</param>
public sealed record DemoSituation(string Name, int Count, OverallOutcome Outcome, Action<JsonObject> Change);

/// <summary>The situations of the demo month.</summary>
internal static class DemoSituations
{
    public static IReadOnlyList<DemoSituation> All { get; } =
    [
        new("a clean service", 138, OverallOutcome.Pass, _ => { }),

        new("the inlet washer was put back, the joint proved tight", 6, OverallOutcome.Advisory, record =>
            record["disturbedJoints"]![0]!["renewed"] = false),
        new("the service came two months late", 6, OverallOutcome.Advisory, record =>
        {
            record["previousVisit"]!["deemedOn"] = "2025-06-20";
            record["previousVisit"]!["finishedAt"] = "2025-06-20T10:00:00+01:00";
        }),
        new("the inhibitor is too weak", 5, OverallOutcome.Advisory, record => record["water"]!["inhibitorOk"] = false),
        new("the strip-down is written down as 18 minutes", 4, OverallOutcome.Advisory, record =>
            record["heatExchanger"]!["minutesSpent"] = 18),
        new("the analyser is out of calibration", 4, OverallOutcome.Advisory, record =>
        {
            record["instruments"]![0]!["calibratedOn"] = "2025-08-01";
            record["instruments"]![0]!["calibrationDueOn"] = "2026-08-01";
        }),
        new("the filling loop was left connected", 3, OverallOutcome.Incomplete, record => record["water"]!["fillingLoopDisconnected"] = false),

        new("the outlet union was not checked with the burner alight", 4, OverallOutcome.Incomplete, record =>
            record["disturbedJoints"]![1]!.AsObject().Remove("burnerAlight")),
        new("the vessel was checked against system pressure", 3, OverallOutcome.Advisory, record =>
            record["water"]!["vesselCheckedAtZeroPressure"] = false),
        new("the air inlet was not sampled", 3, OverallOutcome.Advisory, record => record["combustion"]!.AsObject().Remove("airInlet")),
        new("the engineer's category ran out", 3, OverallOutcome.Incomplete, record =>
            record["engineer"]!["categories"]![0]!["expiresOn"] = "2026-08-14"),
        new("asked early, with half a record", 4, OverallOutcome.Incomplete, record =>
        {
            foreach (var later in (string[])["tightnessTests", "safetyDevices", "paperwork", "water", "coAlarm"])
                record.Remove(later);
        }),

        new("an old washer, neither tested nor checked", 3, OverallOutcome.Unsafe, record =>
        {
            record["disturbedJoints"]![0]!["renewed"] = false;
            record["disturbedJoints"]![0]!["leakChecked"] = false;
            record["tightnessTests"] = new JsonArray();
        }),
        new("products recirculate to the air inlet", 2, OverallOutcome.Unsafe, record =>
        {
            record["combustion"]!["airInlet"] = new JsonObject { ["o2Percent"] = 19.8m, ["co2Percent"] = 0.7m };
            record["combustion"]!["readings"]![0]!["coPpm"] = 38;
            record["combustion"]!["readings"]![0]!["co2Percent"] = 10.1m;
        }),
        new("a ratio far too high, nothing recorded about it", 2, OverallOutcome.Unsafe, record =>
            record["combustion"]!["readings"]![0]!["coPpm"] = 1100),
        new("a ratio too high, classed, turned off, labelled and noted", 3, OverallOutcome.Unsafe, record =>
        {
            record["combustion"]!["readings"]![0]!["coPpm"] = 900;
            record["appliance"]!["stateOnLeaving"] = "turnedOff";
            record["defects"] = new JsonArray(new JsonObject
            {
                ["description"] = "CO/CO2 ratio too high after cleaning", ["topic"] = "combustion", ["class"] = "atRisk",
                ["location"] = "kitchen", ["cause"] = "wear", ["mechanism"] = "incompleteCombustion", ["action"] = "turnedOff",
                ["permission"] = "given", ["userToldNotToUse"] = true, ["labelled"] = true, ["noticeNumber"] = "DEMO-W-12",
                ["copyLeft"] = true, ["userSigned"] = true, ["reportedTo"] = "responsible person", ["notifiedOn"] = "2026-09-14",
                ["reportable"] = new JsonObject { ["decision"] = "no", ["reason"] = "wear, not a listed cause" },
            });
        }),
        new("carbon monoxide in the room", 1, OverallOutcome.Unsafe, record =>
        {
            record["ambientCo"]!["runningPeakPpm"] = 45;
            record["ambientCo"]!["afterPpm"] = 12;
        }),
        new("flame supervision failed its test", 2, OverallOutcome.Unsafe, record => record["safetyDevices"]![0]!["passed"] = false),
        new("smell of gas during the tightness test", 2, OverallOutcome.Unsafe, record => record["tightnessTests"]![0]!["gasSmell"] = true),
        new("a propane boiler, an engineer for natural gas, a bad burn", 2, OverallOutcome.Unsafe, record =>
        {
            record["appliance"]!["fuel"] = "propane";
            record["appliance"]!["plateFuel"] = "propane";
            record["combustion"]!["readings"]![0]!["coPpm"] = 1610;
            record["combustion"]!["readings"]![0]!["co2Percent"] = 10.0m;
        }),
    ];
}
