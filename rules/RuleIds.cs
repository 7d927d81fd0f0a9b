namespace Rules;

/// <summary>The id of every rule. An id is never reused and never given another meaning.</summary>
public static class RuleIds
{
    // Combustion
    public const string CombustionRatio = "combustion-ratio";
    public const string AirInletCheck = "air-inlet-check";

    // Joints and tightness
    public const string GasValveUnionSeal = "gas-valve-union-seal";
    public const string DisturbedGasJointProved = "disturbed-gas-joint-proved";

    // Heat exchanger
    public const string HeatExchangerInspected = "heat-exchanger-inspected";

    // Interval
    public const string LandlordDeadline = "landlord-deadline";

    // Unsafe situations
    public const string UnsafeFindingAnswered = "unsafe-finding-answered";
}
