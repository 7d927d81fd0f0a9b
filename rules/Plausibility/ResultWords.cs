using Records;

namespace Rules.Plausibility;

/// <summary>What a visit came to, as the end of a sentence.</summary>
internal static class ResultWords
{
    /// <summary>The result in words.</summary>
    public static string InWords(this WorkResult result) => result switch
    {
        WorkResult.CarriedOut => "the work was carried out",
        WorkResult.PartlyCarriedOut => "only part of the work was done",
        WorkResult.NoAccess => "nobody got into the premises",
        WorkResult.NoAccessToAppliance => "nobody got to the boiler",
        WorkResult.Refused => "the work was refused",
        WorkResult.GasOff => "there was no gas",
        WorkResult.AwaitingParts => "a part has to be got",
        WorkResult.StoppedForDanger => "the work was stopped because of a danger",
        _ => throw new ArgumentOutOfRangeException(nameof(result), result, "No result of a visit."),
    };
}
