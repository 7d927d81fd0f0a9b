using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Recorded values on which the other opinions advise, whatever the visit owes.</summary>
internal static class Advice
{
    /// <summary>Said of defects, papers and visits and judged here, or advising on silence, which is a duty's to say.</summary>
    private static readonly HashSet<string> JudgedElsewhere =
    [
        .. InferenceOpinions.All.Select(one => one.RuleId), .. UnsafeSituationOpinions.All.Select(one => one.RuleId),
        .. GraveHistoryOpinions.All.Select(one => one.RuleId), .. HistoryOpinions.All.Select(one => one.RuleId),
    ];

    /// <summary>What is said, rule by rule.</summary>
    public static IEnumerable<string> Of(Visit visit) => OpinionTable.All.Where(one => !JudgedElsewhere.Contains(one.Key))
        .SelectMany(one => one.Value(visit.One).Where(opinion => opinion.Outcome == Findings.Outcome.Advisory).Select(opinion => $"{one.Key} {opinion.Subject}"));
}
