namespace Rules;

/// <summary>The id of every rule. An id is never reused and never given another meaning.</summary>
public static class RuleIds
{
    // Combustion
    public const string CombustionRatio = "combustion-ratio";
    public const string AirInletCheck = "air-inlet-check";

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
    public const string HeatExchangerInspected = "heat-exchanger-inspected";

    // Interval
    public const string LandlordDeadline = "landlord-deadline";

    // Unsafe situations
    public const string UnsafeFindingAnswered = "unsafe-finding-answered";
}
