namespace SecondOpinion.Opinions;

/// <summary>Every opinion by rule id.</summary>
internal static class OpinionTable
{
    public static IReadOnlyDictionary<string, Func<Case, IEnumerable<Opinion>>> All { get; } =
        new IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)>[]
        {
            AmbientAirOpinions.All,
            BurnerOpinions.All,
            CoAlarmOpinions.All,
            CombustionOpinions.All,
            CompetenceOpinions.All,
            CondensateOpinions.All,
            ElectricalOpinions.All,
            FlueOpinions.All,
            GasPressureOpinions.All,
            GraveHistoryOpinions.All,
            HeatExchangerOpinions.All,
            HeatInputOpinions.All,
            HistoryOpinions.All,
            InferenceOpinions.All,
            InstrumentsOpinions.All,
            IntervalOpinions.All,
            JointsOpinions.All,
            NewBoilerOpinions.All,
            PaperworkOpinions.All,
            PlausibilityOpinions.All,
            ReadingPlausibilityOpinions.All,
            SafetyDevicesOpinions.All,
            TightnessOpinions.All,
            UnsafeSituationOpinions.All,
            VentilationOpinions.All,
            WaterOpinions.All,
            WithdrawalOpinions.All,
            WorkOpinions.All,
        }
        .SelectMany(topic => topic)
        .ToDictionary(entry => entry.RuleId, entry => entry.Say, StringComparer.Ordinal);
}
