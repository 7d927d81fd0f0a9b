namespace Rules;

/// <summary>The parts of duties. What stands before the slash is the kind of duty, as duties.json names it.</summary>
public static class Part
{
    public const string Parts = "identify/parts";
    public const string Left = "identify/left";
    public const string Plate = "identify/plate";
    public const string Paper = "identify/paper";
    public const string Competence = "competence";
    public const string Flue = "examineAfterWork/flue";
    public const string FlueEffective = "examineAfterWork/flueEffective";
    public const string Air = "examineAfterWork/air";
    public const string Draught = "examineAfterWork/draught";
    public const string PressureOrRate = "examineAfterWork/pressureOrRate";
    public const string Pressure = "examineAfterWork/pressure";
    public const string Rate = "examineAfterWork/rate";
    public const string GasJoints = "proveGasPath/joints";
    public const string Tightness = "proveGasPath/tightness";
    public const string Purge = "proveGasPath/purge";
    public const string Relight = "proveGasPath/relight";
    public const string UsedBoiler = "commission/used";
    public const string AlarmUnattended = "alarmWithoutFault/unattended";
    public const string GasTestPoints = "proveGasPath/testPoints";
    public const string Regulator = "proveGasPath/regulator";
    public const string CombustionSeals = "proveCombustionCircuit/seals";
    public const string Case = "proveCombustionCircuit/case";
    public const string Analysis = "proveCombustionCircuit/analysis";
    public const string FlueTestPoint = "proveCombustionCircuit/testPoint";
    public const string FlueSupports = "proveFlue/supports";
    public const string Terminal = "proveFlue/terminal";
    public const string AirInlet = "proveFlue/airInlet";
    public const string FireSide = "serviceFireSide/inspected";
    public const string FireSideDetails = "serviceFireSide/details";
    public const string Trap = "fillTrap/opened";
    public const string TrapOfService = "fillTrap/service";
    public const string Water = "waterCondensateElectrics/water";
    public const string SealedSystem = "waterCondensateElectrics/sealedSystem";
    public const string ReliefValve = "waterCondensateElectrics/reliefValve";
    public const string FillingLoop = "waterCondensateElectrics/fillingLoop";
    public const string Condensate = "waterCondensateElectrics/condensate";
    public const string Electrics = "waterCondensateElectrics/electrics";
    public const string Bond = "temporaryBond";
    public const string EarthAndPolarity = "waterCondensateElectrics/earthAndPolarity";
    public const string RoomAirBefore = "roomAir/before";
    public const string RoomAirRunning = "roomAir/running";
    public const string RoomAired = "roomAir/aired";
    public const string RoomAirAfter = "roomAir/after";
    public const string SafetyDevices = "safetyDevices";
    public const string LandlordItems = "landlordRecord/items";
    public const string LandlordPipework = "landlordRecord/pipework";
    public const string LandlordDeadline = "landlordRecord/deadline";
    public const string Pipework = "examineAfterWork/pipework";
    public const string NextVisit = "identify/nextVisit";
    public const string Commission = "commission";
    public const string CommissionPaper = "commission/paper";
    public const string AlarmSounded = "alarmWithoutFault";
    public const string AlarmRunning = "alarmWithoutFault/running";
    public const string AlarmOwed = "alarmOwed";
    public const string TraceReadings = "traceFigures/readings";
    public const string TraceTests = "traceFigures/tests";
    public const string TracePressures = "traceFigures/pressures";
    public const string Alterations = "identify/alterations";
    public const string HandleDanger = "handleDanger";
    public const string MadeKnown = "madeKnown";
    public const string Seal = "sealWhatIsLeft";
    public const string Escape = "escapeGasLeftOff";
    /// <summary>Nothing owes it: what is recorded of it is judged, and nothing is asked for.</summary>
    public const string WhereRecorded = "whereRecorded";


    /// <summary>What can only be seen on a boiler that runs.</summary>
    public static readonly IReadOnlyList<string> OfARunningBoiler =
        [FlueEffective, Case, Draught, PressureOrRate, Pressure, Rate, Analysis, AirInlet, RoomAirRunning, AlarmRunning, SafetyDevices];

    /// <summary>What a job that was broken off leaves to the next visit, besides.</summary>
    public static readonly IReadOnlyList<string> OfTheRestOfTheJob =
        [FireSide, FireSideDetails, TrapOfService, Water, SealedSystem, Condensate, Electrics, RoomAirBefore, RoomAirAfter, LandlordItems, LandlordPipework, Commission, CommissionPaper];

    /// <summary>
    /// What comes back at the next visit that uses the boiler. A landlord's record does not: a check that was broken off is none, and the next one
    /// has its own day.
    /// </summary>
    public static readonly IReadOnlyList<string> ComingBack =
        [.. OfARunningBoiler, .. OfTheRestOfTheJob.Where(part => part is not (LandlordItems or LandlordPipework))];
}
