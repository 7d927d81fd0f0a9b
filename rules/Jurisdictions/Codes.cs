namespace Rules.Jurisdictions;

/// <summary>Codes (ISO 3166-2) of the jurisdictions that a rule of several has to tell apart; each is that of a folder here.</summary>
internal static class Codes
{
    public const string England = "GB-ENG";

    public const string Wales = "GB-WLS";

    public const string Scotland = "GB-SCT";
}
