namespace SecondOpinion.Tests;

/// <summary>Every opinion by rule id.</summary>
internal static class OpinionTable
{
    public static IReadOnlyDictionary<string, Func<Case, IEnumerable<Opinion>>> All { get; } =
        new IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)>[]
        {
            AmbientAirOpinions.All,
        }
        .SelectMany(topic => topic)
        .ToDictionary(entry => entry.RuleId, entry => entry.Say, StringComparer.Ordinal);
}
