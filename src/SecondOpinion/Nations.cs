namespace SecondOpinion;

/// <summary>Codes (ISO 3166-2) of the nations whose law differs.</summary>
internal static class Nations
{
    public const string England = "GB-ENG";

    public const string Wales = "GB-WLS";

    public const string Scotland = "GB-SCT";
}
