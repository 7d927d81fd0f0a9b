namespace Rules;

/// <summary>The id of every limit in limits.json.</summary>
public static class LimitIds
{
    public const string CoCo2Ratio = "co-co2-ratio";
    public const string CoCo2RatioCeiling = "co-co2-ratio-ceiling";
    public const string AirInletO2 = "air-inlet-o2";
    public const string AirInletCo2 = "air-inlet-co2";
}
