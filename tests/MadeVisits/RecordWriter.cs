using System.Globalization;
using System.Text.Json.Nodes;

namespace MadeVisits;

/// <summary>Writes the record of one visit, with what the instruments show in place of what is so. The same writer always reads its instruments alike.</summary>
internal sealed class RecordWriter(int seed, DateOnly day, World world, string job, string result, string? part)
{
    /// <summary>A cubic metre of natural gas, gross, MJ: the declared value of an ordinary week; and gross over net of natural gas (from memory).</summary>
    private const decimal CalorificValue = 39.2m, GrossOverNet = 1.109m;

    private readonly DateTimeOffset _start = new(day.ToDateTime(new TimeOnly(9, 0)), Offset(day));

    private Boiler Boiler => world.Boiler;

    private bool IsReached => result is not ("noAccess" or "noAccessToAppliance" or "refused");

    /// <summary>The same visit, said to have come to something else.</summary>
    public RecordWriter WithResult(string other) => new(seed, day, world, job, other, part);

    /// <summary>Everything that such a boiler lets anybody look at.</summary>
    public IReadOnlySet<Aspect> Everything { get; } = Enum.GetValues<Aspect>().Where(aspect => IsOf(world.Boiler, aspect)).ToHashSet();

    /// <summary>Whether such a boiler has what the aspect is about.</summary>
    public static bool IsOf(Boiler boiler, Aspect aspect) => aspect switch
    {
        Aspect.FlueFlow => boiler.FlueType == "openFlued",
        Aspect.Case => boiler.IsRoomSealed,
        Aspect.AirInlet => boiler.FlueType == "roomSealedFanned",
        Aspect.Condensate => boiler.IsCondensing,
        Aspect.Rate or Aspect.Tightness => boiler.Fuel == "naturalGas",
        _ => true,
    };

    /// <summary>The record.</summary>
    /// <param name="found">The true condition as found.</param>
    /// <param name="left">The true condition as left.</param>
    /// <param name="written">What of it he writes.</param>
    /// <param name="dealt">Dangers; those that were seen are written with what was done.</param>
    /// <param name="noise">Another number: another day's readings of the same.</param>
    public JsonObject Write(Condition found, Condition left, IReadOnlySet<Aspect> written, IReadOnlyList<Dealt> dealt, int noise = 0)
    {
        var dice = new Dice(unchecked((seed * 31) + 7 + noise));
        var seen = dealt.Where(one => one.Truth.IsSeen).ToList();
        var record = Frame(seen);
        foreach (var aspect in written.Order())
            Write(record, aspect, found, left, dealt, dice);
        if (IsReached)
            Work(record, written, dice);
        Defects(record, seen);
        Paper(record, dealt);
        return record;
    }

    public string At(int minutes) => _start.AddMinutes(minutes).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    private JsonObject Frame(IReadOnlyList<Dealt> seen)
    {
        var record = new JsonObject
        {
            ["recordId"] = string.Create(CultureInfo.InvariantCulture, $"G-{seed}"),
            ["jobType"] = job,
            ["jurisdiction"] = world.Premises.Jurisdiction,
            ["startedAt"] = At(0),
            ["finishedAt"] = At(IsReached ? 95 : 15),
            ["work"] = new JsonObject { ["result"] = result },
            ["premises"] = new JsonObject { ["reference"] = world.Premises.Reference, ["use"] = world.Premises.Use },
            ["engineer"] = new JsonObject
            {
                ["licenceNumber"] = world.Engineer.LicenceNumber,
                ["businessNumber"] = world.Engineer.BusinessNumber,
                ["categories"] = new JsonArray(new JsonObject { ["fuel"] = Boiler.Fuel, ["scope"] = "domestic", ["expiresOn"] = Day(day.AddMonths(20)) }),
            },
            ["appliance"] = new JsonObject { ["fuel"] = Boiler.Fuel },
        };
        if (!IsReached)
            return record.Put("/work/tried", "rang, knocked, telephoned").Put("/work/leftBehind", "card with a number to ring");

        record.Put("/premises/room", Boiler.Room).Put("/premises/roomIsLivingSpace", Boiler.Room == "livingRoom").Put("/premises/roomIsSleeping", false)
            .Put("/premises/belowGround", false).Put("/premises/alteredSinceLastVisit", false);
        record["appliance"] = new JsonObject
        {
            ["serialNumber"] = Boiler.SerialNumber,
            ["maker"] = Boiler.Maker,
            ["model"] = Boiler.Model,
            ["kind"] = Boiler.Kind,
            ["location"] = Boiler.Room,
            ["fuel"] = Boiler.Fuel,
            ["plateFuel"] = Boiler.Fuel,
            ["flueType"] = Boiler.FlueType,
            ["casePressure"] = Boiler.CasePressure,
            ["condensing"] = Boiler.IsCondensing,
            ["burnerKind"] = Boiler.BurnerKind,
            ["ratedInputKw"] = Boiler.NetInputKw,
            ["ratedInputBasis"] = "net",
            ["heatExchangerMaterial"] = Boiler.ExchangerMaterial,
            ["installedOn"] = Day(job == "commissioning" ? day : Boiler.InstalledOn),
            ["sharedFlue"] = false,
            ["modified"] = false,
            ["ownedByTenant"] = world.Premises.IsLet ? false : null,
            ["stateOnLeaving"] = StateOnLeaving(seen),
            ["shutOffAtInlet"] = job == "commissioning" ? true : null,
        };
        record["makerLimits"] = new JsonObject
        {
            ["coCo2RatioMax"] = 0.004m,
            ["inletPressureMbarMin"] = Boiler.Fuel == "propane" ? 32 : 17,
            ["serviceIntervalMonths"] = 12,
            ["source"] = "invented installation manual, p. 40",
        };
        if (Boiler.IsCondensing)
            record.Put("/makerLimits/co2PercentMin", Boiler.Fuel == "propane" ? 9.6m : 8.5m).Put("/makerLimits/co2PercentMax", Boiler.Fuel == "propane" ? 11.2m : 9.8m).Put("/makerLimits/coPpmMax", 350);
        record["instruments"] = new JsonArray([.. world.Instruments.Select(Listed)]);
        if (result is "gasOff" or "awaitingParts")
            record.Put("/appliance/stateOnLeaving", seen.Any(one => one.Truth.State == DangerState.TakenOutOfUse) ? StateOnLeaving(seen) : "turnedOff").Put("/appliance/leftOffBecause", result == "gasOff" ? "noGas" : "awaitingParts");
        else if (StateOnLeaving(seen) != "inUse")
            record.Put("/appliance/leftOffBecause", "danger");
        return Without(record);
    }

    private static string StateOnLeaving(IEnumerable<Dealt> seen)
    {
        var off = seen.Where(one => one.Truth.State == DangerState.TakenOutOfUse).ToList();
        return off.Exists(one => one.Danger.Class == "immediatelyDangerous") ? "disconnected" : off.Count > 0 ? "turnedOff" : "inUse";
    }

    private void Write(JsonObject record, Aspect aspect, Condition found, Condition left, IReadOnlyList<Dealt> dealt, Dice dice)
    {
        switch (aspect)
        {
            case Aspect.Flue:
                record.Put("/flue/visualOk", left.IsFlueSound).Put("/flue/wholeRouteSeen", true).Put("/flue/inVoid", false).Put("/flue/supportsOk", left.IsFlueSound)
                    .Put("/flue/material", Boiler.IsCondensing ? "plastic" : "metal").Put("/flue/effectivenessConfirmed", left.IsFlueSound && !left.Spills);
                break;
            case Aspect.FlueFlow:
                record.Put("/flue/flowTestPassed", true).Put("/flue/spillageTestPassed", !left.Spills).Put("/flue/fansRunningDuringSpillage", true);
                break;
            case Aspect.Case:
                record.Put("/flue/caseSealChecked", true).Put("/flue/caseSealMethod", "touchAndSmoke").Put("/flue/caseSealOk", left.IsCaseTight);
                break;
            case Aspect.AirInlet:
                record.Put("/combustion/airInlet/o2Percent", Rounded(20.9m - (left.InletCo2Percent * 1.8m), 1)).Put("/combustion/airInlet/co2Percent", Rounded(left.InletCo2Percent, 1));
                break;
            case Aspect.Terminal:
                record.Put("/flue/terminalClearances", Boiler.FlueType == "openFlued" ? new JsonArray() : new JsonArray(new JsonObject { ["to"] = "besideOpening", ["distanceMm"] = Rounded(left.TerminalMm, 0) }))
                    .Put("/flue/terminalHeightMm", Boiler.FlueType == "openFlued" ? 5500 : 2250).Put("/flue/terminalGuarded", Boiler.FlueType == "openFlued");
                break;
            case Aspect.Combustion:
                Readings(record, found, left, dice);
                break;
            case Aspect.Tightness:
                Tightness(record, found, left, dealt);
                break;
            case Aspect.Pressure:
                record.Put("/gasSupply/meterKind", Boiler.Fuel == "propane" ? "none" : "diaphragmU6").Put("/gasSupply/applianceInletMbar", Shown("pressureGauge", left.InletMbar, 1)).Put("/gasSupply/pressureBy", "nipple")
                    .Put("/gasSupply/testPointsClosed", true).Put("/gasSupply/testPointsLeakChecked", true);
                if (Boiler.Fuel == "naturalGas")
                    record.Put("/gasSupply/regulatorSealIntact", true).Put("/gasSupply/meterDisplayWorks", true).Put("/gasSupply/meterOperatingMbar", Shown("pressureGauge", left.InletMbar + 0.6m, 1)).Put("/gasSupply/othersAtHalfLoad", true);
                break;
            case Aspect.Rate:
                record.Put("/gasSupply/rate", new JsonObject
                {
                    ["volumeM3"] = Rounded(left.InputShare * Boiler.NetInputKw * GrossOverNet * 120 / (CalorificValue * 1000), 3),
                    ["seconds"] = 120,
                    ["calorificValueMjPerM3"] = CalorificValue,
                    ["atMaximum"] = true,
                    ["otherAppliancesOff"] = true,
                    ["warmMinutes"] = 12,
                });
                break;
            case Aspect.RoomAir:
                record.Put("/ambientCo/beforePpm", 0).Put("/ambientCo/runningPeakPpm", Shown("flueGasAnalyser", left.RoomCoPpm, 0)).Put("/ambientCo/afterPpm", Rounded(left.RoomCoPpm / 3, 0));
                break;
            case Aspect.Ventilation:
                record.Put("/ventilation/airInletClear", true).Put("/ventilation/compartment", false).Put("/ventilation/blocked", left.IsVentBlocked);
                if (Boiler.FlueType == "openFlued")
                    record.Put("/ventilation/freeAreaCm2", Rounded(Boiler.NetInputKw * 6, 0)).Put("/ventilation/opensTo", "outside").Put("/ventilation/throughInnerRooms", false).Put("/ventilation/gauze", false)
                        .Put("/ventilation/closable", false).Put("/ventilation/otherOpenFluedNetKw", 0).Put("/ventilation/extractFanInRoom", true);
                break;
            case Aspect.SafetyDevices:
                record.Put("/safetyDevices", new JsonArray([.. Devices(left)]));
                break;
            case Aspect.Electrics:
                record.Put("/electrical", new JsonObject
                {
                    ["isolatedSafely"] = true,
                    ["polarityOk"] = true,
                    ["earthOk"] = left.EarthOhm < 3,
                    ["earthOhm"] = Shown("multimeter", left.EarthOhm, left.EarthOhm < 3 ? 2 : 0),
                    ["fuseAmps"] = 3,
                    ["mainBonding"] = true,
                    ["doublePoleIsolation"] = true,
                });
                break;
            case Aspect.Water:
                Water(record, left);
                break;
            case Aspect.FireSide:
                record.Put("/heatExchanger", new JsonObject { ["inspected"] = true, ["cleaned"] = found.Deposits != "none", ["deposits"] = found.Deposits, ["method"] = found.Deposits == "none" ? null : Boiler.ExchangerMaterial == "stainlessSteel" ? "vacuum" : "brush", ["topPlateRemoved"] = true, ["minutesSpent"] = dice.UpTo(25) + 25 })
                    .Put("/burner/condition", "good").Put("/burner/electrodesClean", true).Put("/burner/electrodeGapMm", Rounded(dice.Between(3.2m, 4.2m), 1));
                Without(record["heatExchanger"]!.AsObject());
                break;
            case Aspect.Condensate:
                record.Put("/condensate/trapCleaned", true).Put("/condensate/trapRefilled", true).Put("/condensate/pipeInternalDiameterMm", 19).Put("/condensate/runsOutside", false).Put("/condensate/seenRunning", true);
                break;
            case Aspect.Pipework:
                record.Put("/pipework/visualOk", true).Put("/pipework/damageOrCorrosion", false).Put("/pipework/sleeved", true).Put("/pipework/supported", true);
                break;
            case Aspect.Alarm:
                record.Put("/coAlarm/present", true).Put("/coAlarm/tested", true).Put("/coAlarm/replaceBy", Day(day.AddYears(3))).Put("/coAlarm/standard", "EN 50291-1").Put("/coAlarm/activatedSinceLastVisit", false);
                break;
        }
    }

    private void Readings(JsonObject record, Condition found, Condition left, Dice dice)
    {
        var readings = new JsonArray();
        if (found.CoPpmMaximum != left.CoPpmMaximum)
            AddReadings(found, "beforeWork", 12);
        AddReadings(left, "afterWork", 75);
        record.Put("/combustion/readings", readings).Put("/combustion/zeroedOutdoors", true).Put("/combustion/settledMinutes", 10).Put("/combustion/testPointClosed", true);

        void AddReadings(Condition condition, string stage, int minutes)
        {
            readings.Add(Reading("maximum", condition.CoPpmMaximum, condition.Co2PercentMaximum, condition.FlueTemperatureC, minutes));
            if (Boiler.BurnerKind == "premix")
                readings.Add(Reading("minimum", condition.CoPpmMinimum, condition.Co2PercentMinimum, condition.FlueTemperatureC - 8, minutes + 6));

            JsonObject Reading(string rate, decimal co, decimal co2, decimal flue, int at)
            {
                var shown = Shown("flueGasAnalyser", co2, 1);
                // O2 belongs to CO2 as the analyser works it out: 20.9 x (1 - CO2 / the most that the gas can give), 11.7 for natural gas, 13.7 for propane (from memory).
                var most = Boiler.Fuel == "propane" ? 13.7m : 11.7m;
                return Without(new JsonObject
                {
                    ["rate"] = rate,
                    ["stage"] = stage,
                    ["coPpm"] = Shown("flueGasAnalyser", co + dice.Around(0, 1), 0),
                    ["co2Percent"] = shown,
                    ["o2Percent"] = Rounded(20.9m * (1 - (shown / most)), 1),
                    ["flueTemperatureC"] = Rounded(flue, 0),
                    ["airTemperatureC"] = 17,
                    ["instrument"] = world.Instruments[0].SerialNumber,
                    ["takenAt"] = At(at),
                    ["loadPercent"] = rate == "maximum" ? 100 : null,
                });
            }
        }
    }

    private void Tightness(JsonObject record, Condition found, Condition left, IReadOnlyList<Dealt> dealt)
    {
        var tests = new JsonArray();
        if (found.DropMbar != left.DropMbar)
            tests.Add(Test("beforeWork", found));
        tests.Add(Test("afterWork", left));
        record.Put("/tightnessTests", tests);

        JsonObject Test(string stage, Condition condition) => new()
        {
            ["stage"] = stage,
            ["edition"] = day < new DateOnly(2026, 9, 1) ? "3" : "4",
            ["installationVolumeM3"] = 0.009m,
            ["installationVolumeFrom"] = "measured",
            ["largestPipeMm"] = 22,
            ["supplyPressureBar"] = 0.03m,
            ["safeToTouchChecked"] = true,
            ["letByPressureMbar"] = 8,
            ["letByRiseMbar"] = 0,
            ["letByMinutes"] = 1,
            ["testPressureMbar"] = 20.4m,
            ["stabilisationMinutes"] = 1,
            ["durationMinutes"] = 2,
            ["dropMbar"] = Shown("pressureGauge", condition.DropMbar, 1),
            ["appliancesConnected"] = !(stage == "afterWork" && StateOnLeaving(dealt) == "disconnected"),
            ["applianceValvesOpen"] = true,
            ["pipeworkOnlyMovementMbar"] = condition.LeaksAboveValve ? Shown("pressureGauge", condition.DropMbar, 1) : 0,
            ["gauge"] = "electronic",
            ["gaugeResolutionMbar"] = 0.01m,
            ["gasSmell"] = condition.DropMbar > 4,
        };
    }

    private IEnumerable<JsonNode> Devices(Condition left)
    {
        yield return Device("flameSupervision", left.FlameSupervisionWorks);
        yield return Device("overheatThermostat", true);
        if (Boiler.FlueType == "roomSealedFanned")
            yield return Device("airPressureProving", true);

        static JsonObject Device(string kind, bool passed) => new() { ["kind"] = kind, ["tested"] = true, ["passed"] = passed };
    }

    private void Water(JsonObject record, Condition left)
    {
        if (Boiler.IsOpenVented)
        {
            record.Put("/water/systemType", "openVented").Put("/water/ventAndFeedOpen", true).Put("/water/inhibitorTested", true).Put("/water/inhibitorOk", true);
            return;
        }

        record.Put("/water", new JsonObject
        {
            ["systemType"] = "sealed",
            ["coldFillBar"] = 1.2m,
            ["hotBar"] = 1.6m,
            ["vesselPrechargeBar"] = Rounded(left.PrechargeBar, 2),
            ["vesselCheckedAtZeroPressure"] = true,
            ["staticHeadM"] = 5,
            ["reliefValve"] = left.ReliefValve,
            ["reliefSettingBar"] = 3,
            ["reliefDischargeSafe"] = true,
            ["fillingLoopDisconnected"] = true,
            ["inhibitorTested"] = true,
            ["inhibitorOk"] = true,
        });
    }

    private void Work(JsonObject record, IReadOnlySet<Aspect> written, Dice dice)
    {
        var (joints, touched) = (new JsonArray(), new JsonArray());
        if (written.Contains(Aspect.FireSide))
        {
            touched.Add("combustionCircuit");
            if (Boiler.IsCondensing)
            {
                touched.Add("gasPath");
                joints.Add(Joint("gasValveOutlet", carriesGas: true));
                joints.Add(Joint("topPlate", carriesGas: false));
            }
            else
            {
                joints.Add(Joint("burnerDoor", carriesGas: false));
            }
        }

        if (part is not null)
        {
            record.Put("/partsFitted", new JsonArray(new JsonObject { ["partNumber"] = string.Create(CultureInfo.InvariantCulture, $"X-{dice.UpTo(9000) + 1000}"), ["kind"] = part }));
            touched.Add(part is "gasValve" ? "gasPath" : part is "fan" or "electrode" ? "combustionCircuit" : part is "pump" ? "waterSide" : "electrics");
            if (part is "gasValve")
            {
                record.Put("/partsFitted/0/forFuel", Boiler.Fuel);
                joints.Add(Joint("gasValveInlet", carriesGas: true));
                joints.Add(Joint("gasValveOutlet", carriesGas: true));
            }
            else if (part is "fan" or "electrode")
            {
                joints.Add(Joint(part, carriesGas: false));
                record.Put("/work/noGasJointOpened", true);
            }
        }
        else
        {
            record.Put("/partsFitted", new JsonArray());
        }

        if (job == "commissioning")
            record.Put("/commissioning", new JsonObject { ["newBoiler"] = true, ["instructionsFollowed"] = true, ["seasonalEfficiencyPercent"] = Boiler.IsCondensing ? 93 : 89, ["interlock"] = true }).Put("/paperwork/instructionsLeft", true).Put("/work/purged", true);
        record.Put("/work/touched", touched).Put("/disturbedJoints", joints);

        static JsonObject Joint(string place, bool carriesGas)
        {
            var joint = new JsonObject { ["place"] = place, ["carriesGas"] = carriesGas, ["seal"] = carriesGas ? "washer" : "gasket", ["condition"] = "good", ["renewed"] = carriesGas, ["leakChecked"] = true };
            if (carriesGas)
                joint["leakCheckMethod"] = "fluid";
            if (place == "gasValveOutlet")
                joint["burnerAlight"] = true;
            return joint;
        }
    }

    private void Defects(JsonObject record, IReadOnlyList<Dealt> seen)
    {
        var written = seen.Where(one => one.Truth.State != DangerState.Standing).ToList();
        record.Put("/defects", new JsonArray([.. written.Select(Defect)]));
        var gas = seen.FirstOrDefault(one => one.Danger.Mechanism == "gasLeak" || one.Danger.Kind == DangerKind.CarbonMonoxideInTheRoom);
        record.Put("/escape/reported", gas is not null && gas.Truth.State != DangerState.Standing);
        if (gas is null || gas.Truth.State == DangerState.Standing)
            return;
        record.Put("/escape/gasIsolated", gas.Truth.State is DangerState.PutRight or DangerState.TakenOutOfUse)
            .Put("/escape/isolatedAt", gas.Truth.State == DangerState.LeftByRefusal || gas.LeftOut == "isolatedAt" ? "notIsolated" : gas.Danger.IsolatedAt).Put("/escape/told", Told(gas));
        if (gas.Truth.State != DangerState.PutRight)
            record.Put("/escape/reference", "ER-10001").Put("/escape/reportedAt", At(60));
        else
            record.Put("/work/purged", true).Put("/work/relit", true);
    }

    private JsonNode Defect(Dealt dealt)
    {
        var (danger, state) = (dealt.Danger, dealt.Truth.State);
        var isImmediate = danger.Class == "immediatelyDangerous";
        var defect = new JsonObject
        {
            ["description"] = danger.Says,
            ["location"] = Boiler.Room,
            ["topic"] = danger.Topic,
            ["subject"] = danger.Subject,
            ["class"] = danger.Class,
            ["cause"] = "wear",
            ["mechanism"] = danger.Mechanism,
            ["action"] = state switch { DangerState.PutRight => "rectified", DangerState.LeftByRefusal => "none", _ => isImmediate ? "disconnected" : "turnedOff" },
            ["foundAt"] = At(20),
            ["notifiedOn"] = Day(day),
            ["told"] = Told(dealt),
            ["reportable"] = new JsonObject { ["decision"] = "no", ["reason"] = "worn in use, none of the listed causes" },
        };
        if (state == DangerState.PutRight)
        {
            if (dealt.LeftOut != "reexaminedAt")
                defect["reexaminedAt"] = At(75);
            return defect;
        }

        if (state == DangerState.TakenOutOfUse && dealt.LeftOut != "isolatedAt")
            defect["isolatedAt"] = danger.IsolatedAt;
        defect["permission"] = state == DangerState.LeftByRefusal ? "refused" : "given";
        defect["userToldNotToUse"] = true;
        defect["labelled"] = true;
        defect["noticeNumber"] = string.Create(CultureInfo.InvariantCulture, $"N-{seed}");
        defect["copyLeft"] = true;
        defect["userSigned"] = dealt.LeftOut != "userSigned";
        if (state == DangerState.LeftByRefusal && isImmediate && dealt.LeftOut != "emergencyReference")
            defect["emergencyReference"] = "ER-10002";
        return defect;
    }

    /// <summary>The owner where he is somebody else, and who comes for an escape.</summary>
    private JsonArray Told(Dealt dealt)
    {
        if (dealt.LeftOut == "told")
            return [];
        var told = new JsonArray("responsiblePerson");
        if (world.Premises.IsLet)
            told.Add("landlordOrAgent");
        if (dealt.Truth.State != DangerState.PutRight && dealt.Danger.Class == "immediatelyDangerous")
            told.Add(Boiler.Fuel == "propane" ? "supplier" : "emergencyService");
        return told;
    }

    private void Paper(JsonObject record, IReadOnlyList<Dealt> dealt)
    {
        record.Put("/paperwork/engineerSigned", true).Put("/paperwork/premisesAddressGiven", true);
        if (!IsReached)
            return;
        record.Put("/paperwork/defectsNotedOrNone", true).Put("/paperwork/workNoted", true).Put("/paperwork/examinationConfirmed", true);
        if (job is "annualService" or "landlordCheck")
            record.Put("/paperwork/nextDueOn", Day(day.AddYears(1)));
        if (world.Premises.IsLet)
            record.Put("/paperwork/landlordName", true).Put("/paperwork/landlordAddress", true).Put("/paperwork/copyToOccupierOn", Day(day));
        if (StateOnLeaving(dealt) == "disconnected")
            record.Put("/work/gaswaysSealed", !dealt.Any(one => one.LeftOut == "gaswaysSealed"));
        if (StateOnLeaving(dealt) != "inUse" && dealt.Any(one => one.Danger.IsolatedAt == "electricalSupply"))
            record.Put("/electrical/supplyOff", true);
    }

    private JsonObject Listed(Instrument instrument)
    {
        var listed = new JsonObject { ["kind"] = instrument.Kind, ["serialNumber"] = instrument.SerialNumber, ["calibratedOn"] = Day(instrument.CalibratedOn), ["calibrationDueOn"] = Day(instrument.DueOn) };
        if (instrument.Kind == "flueGasAnalyser")
            listed["standard"] = "EN 50379-3";
        if (instrument.Kind == "pressureGauge")
            listed["resolution"] = 0.01m;
        return listed;
    }

    private decimal Shown(string kind, decimal value, int places) => Math.Max(0, Rounded(value * (1 + world.Instruments.First(one => one.Kind == kind).Bias), places));

    private static decimal Rounded(decimal value, int places) => decimal.Round(value, places);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>Absent is how "not recorded" is said.</summary>
    private static JsonObject Without(JsonObject section)
    {
        foreach (var name in section.Where(member => member.Value is null).Select(member => member.Key).ToList())
            section.Remove(name);
        if (section["appliance"] is JsonObject appliance)
            Without(appliance);
        return section;
    }

    /// <summary>British clocks: an hour ahead from the last Sunday of March to the last Sunday of October.</summary>
    private static TimeSpan Offset(DateOnly day) =>
        day >= LastSunday(day.Year, 3) && day < LastSunday(day.Year, 10) ? TimeSpan.FromHours(1) : TimeSpan.Zero;

    private static DateOnly LastSunday(int year, int month)
    {
        var last = new DateOnly(year, month, 31);
        return last.AddDays(-(int)last.DayOfWeek);
    }
}
