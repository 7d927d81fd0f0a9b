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
    public const string ReadingOrder = "reading-order";

    // Joints
    public const string GasValveUnionSeal = "gas-valve-union-seal";
    public const string CombustionCircuitSeal = "combustion-circuit-seal";
    public const string OtherSeal = "other-seal";
    public const string MakersSealRenewed = "makers-seal-renewed";
    public const string NewSealPartNumber = "new-seal-part-number";
    public const string DisturbedGasJointProved = "disturbed-gas-joint-proved";
    public const string GasJointLeakCheck = "gas-joint-leak-check";
    public const string CombustionJointChecked = "combustion-joint-checked";
    public const string GasJointListed = "gas-joint-listed";
    public const string FlueTestPointClosed = "flue-test-point-closed";

    // Tightness
    public const string TightnessTestedAfterWork = "tightness-tested-after-work";
    public const string TightnessTestDate = "tightness-test-date";
    public const string TightnessEdition = "tightness-edition";
    public const string TightnessScope = "tightness-scope";
    public const string SafeToTouch = "safe-to-touch";
    public const string LetByTest = "let-by-test";
    public const string TightnessPressure = "tightness-pressure";
    public const string TightnessMinutes = "tightness-minutes";
    public const string TightnessGauge = "tightness-gauge";
    public const string TightnessResult = "tightness-result";
    public const string LeakFoundBeforeWork = "leak-found-before-work";
    public const string PipeworkSound = "pipework-sound";
    public const string PipeworkProtected = "pipework-protected";

    // Gas pressure
    public const string TestPointsClosed = "test-points-closed";
    public const string RegulatorSeal = "regulator-seal";
    public const string MeterOperatingPressure = "meter-operating-pressure";
    public const string MeterStandingPressure = "meter-standing-pressure";
    public const string InletPressureLoss = "inlet-pressure-loss";
    public const string InletPressure = "inlet-pressure";
    public const string BurnerPressure = "burner-pressure";
    public const string PartForThisGas = "part-for-this-gas";

    // Heat input
    public const string PressureOrHeatInputExamined = "pressure-or-heat-input-examined";
    public const string HeatInput = "heat-input";
    public const string PlateBasis = "plate-basis";
    public const string GasRateMeasurement = "gas-rate-measurement";
    public const string CalorificValue = "calorific-value";

    // Heat exchanger
    public const string ExchangerApproach = "exchanger-approach";
    public const string HeatExchangerInspected = "heat-exchanger-inspected";
    public const string HeatExchangerCleaned = "heat-exchanger-cleaned";
    public const string CleaningMethod = "cleaning-method";
    public const string StripDownTime = "strip-down-time";

    // Competence
    public const string LicenceNumberRecorded = "licence-number-recorded";
    public const string BusinessNumberRecorded = "business-number-recorded";
    public const string CategoryCoversAppliance = "category-covers-appliance";

    // Instruments
    public const string AnalyserZeroed = "analyser-zeroed";
    public const string AnalyserCalibrated = "analyser-calibrated";
    public const string PressureGaugeCalibrated = "pressure-gauge-calibrated";
    public const string OtherInstrumentCalibrated = "other-instrument-calibrated";
    public const string AnalyserStandard = "analyser-standard";
    public const string ReadingTraceable = "reading-traceable";

    // Interval
    public const string LandlordDeadline = "landlord-deadline";
    public const string ServiceInterval = "service-interval";
    public const string WorkplaceInterval = "workplace-interval";
    public const string NextDueRecorded = "next-due-recorded";

    // Paperwork
    public const string RecordSigned = "record-signed";
    public const string WorkNoted = "work-noted";
    public const string DefectsNoted = "defects-noted";
    public const string ExaminationConfirmed = "examination-confirmed";
    public const string ApplianceIdentified = "appliance-identified";
    public const string LandlordRecordAddress = "landlord-record-address";
    public const string LandlordRecordLandlord = "landlord-record-landlord";
    public const string LandlordRecordAppliance = "landlord-record-appliance";
    public const string LandlordPipework = "landlord-pipework";
    public const string CopyToOccupier = "copy-to-occupier";
    public const string CopyToNewTenant = "copy-to-new-tenant";
    public const string ElectronicRecordIdentifiesEngineer = "electronic-record-identifies-engineer";
    public const string BuildingCertificate = "building-certificate";
    public const string AuthorityNotified = "authority-notified";
    public const string NewBoilerEfficiency = "new-boiler-efficiency";
    public const string NewBoilerInterlock = "new-boiler-interlock";
    public const string NewBoilerExtraMeasure = "new-boiler-extra-measure";
    public const string NewBoilerDesignFlow = "new-boiler-design-flow";

    // Water
    public const string VesselPrechargeOverHead = "vessel-precharge-over-head";
    public const string VesselPrechargeToFill = "vessel-precharge-to-fill";
    public const string VesselVolume = "vessel-volume";
    public const string ColdFillPressure = "cold-fill-pressure";
    public const string HotPressure = "hot-pressure";
    public const string ReliefMargin = "relief-margin";
    public const string ReliefValveState = "relief-valve-state";
    public const string ReliefDischarge = "relief-discharge";
    public const string FillingLoopDisconnected = "filling-loop-disconnected";
    public const string InhibitorTested = "inhibitor-tested";
    public const string InhibitorDosed = "inhibitor-dosed";
    public const string FilterCleaned = "filter-cleaned";
    public const string ReturnCoolEnoughToCondense = "return-cool-enough-to-condense";
    public const string FlowReturnDifference = "flow-return-difference";

    // Plausibility
    public const string Co2AgreesWithO2 = "co2-agrees-with-o2";
    public const string StatedRatioAgrees = "stated-ratio-agrees";
    public const string ReadingWithinVisit = "reading-within-visit";
    public const string RepeatedReadingsAgree = "repeated-readings-agree";
    public const string ReadingsDiffer = "readings-differ";
    public const string FlowAboveReturn = "flow-above-return";
    public const string FlueAboveReturn = "flue-above-return";
    public const string TightnessTestDated = "tightness-test-dated";
    public const string VisitLongEnough = "visit-long-enough";
    public const string PlateFuel = "plate-fuel";
    public const string ApplianceModified = "appliance-modified";
    public const string PressureFinerThanGauge = "pressure-finer-than-gauge";
    public const string TightnessFinerThanGauge = "tightness-finer-than-gauge";

    // Unsafe situations
    public const string EscapeMadeSafe = "escape-made-safe";
    public const string AlteredSinceLastVisit = "altered-since-last-visit";
    public const string StateOnLeavingRecorded = "state-on-leaving-recorded";
    public const string DefectClassed = "defect-classed";
    public const string DefectDescribed = "defect-described";
    public const string DefectNotified = "defect-notified";
    public const string DangerIsolated = "danger-isolated";
    public const string RectifiedReexamined = "rectified-reexamined";
    public const string ImmediatelyDangerousRecorded = "immediately-dangerous-recorded";
    public const string AtRiskRecorded = "at-risk-recorded";
    public const string DefectMadeSafe = "defect-made-safe";
    public const string DefectPermission = "defect-permission";
    public const string DefectLabelled = "defect-labelled";
    public const string WarningNotice = "warning-notice";
    public const string UserToldNotToUse = "user-told-not-to-use";
    public const string NoticeCopyLeft = "notice-copy-left";
    public const string NoticeSigned = "notice-signed";
    public const string ReportDecided = "report-decided";
    public const string ReportInTime = "report-in-time";

    // B: what was done, and commissioning
    public const string TouchedStated = "touched-stated";
    public const string PartKindStated = "part-kind-stated";
    public const string PremisesUseStated = "premises-use-stated";
    public const string MakerInstructionsLeft = "maker-instructions-left";
    public const string MakerInstructionsFollowed = "maker-instructions-followed";
    public const string ShutOffAtInlet = "shut-off-at-inlet";
    public const string UsedApplianceVerified = "used-appliance-verified";
    public const string InstallationPurged = "installation-purged";
    public const string AppliancesRelit = "appliances-relit";
    public const string GaswaysSealed = "gasways-sealed";
    public const string NoAccessRecorded = "no-access-recorded";
    public const string StopNamed = "stop-named";
    public const string VentAndFeedOpen = "vent-and-feed-open";
    public const string FlueGasSuitsFlue = "flue-gas-suits-flue";

    // Over the visits to one appliance
    public const string RatioDrift = "ratio-drift";
    public const string Co2Drift = "co2-drift";
    public const string FlueAboveReturnDrift = "flue-above-return-drift";
    public const string PrechargeDrift = "precharge-drift";
    public const string FlameCurrentDrift = "flame-current-drift";
    public const string DangerLeftBefore = "danger-left-before";
    public const string DangerTakenBack = "danger-taken-back";
    public const string ValueTakenBack = "value-taken-back";
    public const string DefectNotedBefore = "defect-noted-before";
    public const string SameReadings = "same-readings-as-before";
    public const string ApplianceChanged = "appliance-changed";

    // Inference over findings and recorded defects
    public const string UnsafeFindingAnswered = "unsafe-finding-answered";
    public const string ClassLowerThanExpected = "class-lower-than-expected";
    public const string LowClassWithoutAction = "low-class-without-action";
    public const string UnsafeLeftInUse = "unsafe-left-in-use";
    public const string AdvisoriesTogether = "advisories-together";

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
    public const string PlantRoomVentArea = "plant-room-vent-area";

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
    public const string TemporaryBond = "temporary-bond";
    public const string Polarity = "polarity";
    public const string EarthContinuity = "earth-continuity";
    public const string Insulation = "insulation";
    public const string FuseAndIsolator = "fuse-and-isolator";
    public const string MainBonding = "main-bonding";

    // Carbon monoxide alarm
    public const string CoAlarmWorks = "co-alarm-works";
    public const string CoAlarmPlace = "co-alarm-place";
    public const string CoAlarmSounded = "co-alarm-sounded";
    public const string CoAlarmCause = "co-alarm-cause";
    public const string CoAlarmEnglandRented = "co-alarm-england-rented";
    public const string CoAlarmEnglandNewBoiler = "co-alarm-england-new-boiler";
    public const string CoAlarmWalesRented = "co-alarm-wales-rented";
    public const string CoAlarmScotland = "co-alarm-scotland";

    // A: what a record says twice
    public const string SystemTypeAgrees = "system-type-agrees";
    public const string FlueTypeAgrees = "flue-type-agrees";
    public const string CondensingAgrees = "condensing-agrees";
    public const string PremisesUseAgrees = "premises-use-agrees";
    public const string ResultAgreesWithRecord = "result-agrees-with-record";
    public const string ConcernsAgree = "concerns-agree";
    public const string ResultAgreesWithState = "result-agrees-with-state";
    public const string ReasonAgreesWithRecord = "reason-agrees-with-record";
    public const string NoGasJointOpenedAgrees = "no-gas-joint-opened-agrees";
    public const string CarriedOutAgrees = "carried-out-agrees";
}
