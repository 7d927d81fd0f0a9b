namespace SecondOpinion.Tests;

/// <summary>Every opinion by rule id.</summary>
internal static class OpinionTable
{
    public static IReadOnlyDictionary<string, Func<Case, IEnumerable<Opinion>>> All { get; } =
        new IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)>[]
        {
            AmbientAirOpinions.All,
            BurnerOpinions.All,
            CoAlarmOpinions.All,
            CompetenceOpinions.All,
            CondensateOpinions.All,
            ElectricalOpinions.All,
            HeatExchangerOpinions.All,
            InferenceOpinions.All,
            InstrumentsOpinions.All,
            IntervalOpinions.All,
            NewBoilerOpinions.All,
            PaperworkOpinions.All,
            PlausibilityOpinions.All,
            ReadingPlausibilityOpinions.All,
            UnsafeSituationOpinions.All,
            WaterOpinions.All,
        }
        .SelectMany(topic => topic)
        .ToDictionary(entry => entry.RuleId, entry => entry.Say, StringComparer.Ordinal);
}
