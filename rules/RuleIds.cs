namespace Rules;

/// <summary>The id of every rule. An id is never reused and never given another meaning.</summary>
public static class RuleIds
{
    // Combustion
    public const string CombustionRatio = "combustion-ratio";
    public const string AirInletCheck = "air-inlet-check";
    public const string FlueCo = "flue-co";
    public const string FlueCo2 = "flue-co2";
    public const string ReadingsAtBothRates = "readings-at-both-rates";
    public const string FlueReadingSettled = "flue-reading-settled";
    public const string AnalyserZeroed = "analyser-zeroed";
    public const string ReadingOrder = "reading-order";
    public const string FlueTestPointClosed = "flue-test-point-closed";

    // Joints and tightness
    public const string GasValveUnionSeal = "gas-valve-union-seal";
    public const string DisturbedGasJointProved = "disturbed-gas-joint-proved";

    // Heat exchanger
    public const string HeatExchangerInspected = "heat-exchanger-inspected";
    public const string HeatExchangerCleaned = "heat-exchanger-cleaned";
    public const string CleaningMethod = "cleaning-method";
    public const string StripDownTime = "strip-down-time";

    // Interval
    public const string LandlordDeadline = "landlord-deadline";

    // Unsafe situations
    public const string UnsafeFindingAnswered = "unsafe-finding-answered";

    // Ambient air
    public const string AmbientCoBefore = "ambient-co-before";
    public const string AmbientCoRunning = "ambient-co-running";
    public const string AmbientCoAfter = "ambient-co-after";
    public const string RaisedRoomAirVentilated = "raised-room-air-ventilated";

    // Flue
    public const string FlueExamined = "flue-examined";
    public const string FlueEffective = "flue-effective";
    public const string FlueInVoid = "flue-in-void";
    public const string FlueSupports = "flue-supports";
    public const string TerminalClearance = "terminal-clearance";
    public const string TerminalGuard = "terminal-guard";
    public const string FlueFlowTest = "flue-flow-test";
    public const string SpillageTest = "spillage-test";
    public const string OpenFlueRoom = "open-flue-room";
    public const string CaseSeal = "case-seal";

    // Ventilation
    public const string AirSupplyExamined = "air-supply-examined";
    public const string VentsClear = "vents-clear";
    public const string VentKind = "vent-kind";
    public const string RoomVentArea = "room-vent-area";
    public const string CompartmentVentArea = "compartment-vent-area";
    public const string CompartmentVentLabel = "compartment-vent-label";
    public const string AirtightHomeVent = "airtight-home-vent";
    public const string LpgBelowGround = "lpg-below-ground";

    // Safety devices
    public const string SafetyDeviceProved = "safety-device-proved";
    public const string SafetyDevicesListed = "safety-devices-listed";

    // Burner
    public const string BurnerCondition = "burner-condition";
    public const string ElectrodesClean = "electrodes-clean";
    public const string ElectrodeGap = "electrode-gap";

    // Condensate
    public const string TrapCleaned = "trap-cleaned";
    public const string TrapRefilled = "trap-refilled";
    public const string CondensateRunning = "condensate-running";
    public const string CondensatePipe = "condensate-pipe";
    public const string CondensateFall = "condensate-fall";

    // Electrical
    public const string SafeIsolation = "safe-isolation";
    public const string Polarity = "polarity";
    public const string EarthContinuity = "earth-continuity";
    public const string Insulation = "insulation";
    public const string FuseAndIsolator = "fuse-and-isolator";
    public const string MainBonding = "main-bonding";

    // Carbon monoxide alarm
    public const string CoAlarmWorks = "co-alarm-works";
    public const string CoAlarmPlace = "co-alarm-place";
    public const string CoAlarmSounded = "co-alarm-sounded";
    public const string CoAlarmEnglandRented = "co-alarm-england-rented";
    public const string CoAlarmEnglandNewBoiler = "co-alarm-england-new-boiler";
    public const string CoAlarmWalesRented = "co-alarm-wales-rented";
    public const string CoAlarmScotland = "co-alarm-scotland";
}
