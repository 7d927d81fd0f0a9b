using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Combustion;

/// <summary>What follows when a flue reading after the work breaks its limit and stays under the ceiling.</summary>
internal static class OverTheLimit
{
    private const string Remedy =
        "Clean and check burner, exchanger and air path, then measure again; if it stays, get and record the maker's decision.";

    /// <summary>
    /// At a commissioning the boiler may not be put into use before a later reading conforms or the maker has decided. At any other visit
    /// the reading is an advisory, and with <paramref name="needsDecision"/> the same holds for closing the job.
    /// </summary>
    public static Verdict OverLimit(this Look look, Visit visit, FormattableString message, bool needsDecision, bool isMeasuredAgain)
    {
        var asked = look.DecisionAsked(visit, isMeasuredAgain);
        var verdict = visit.Record.JobType == JobType.Commissioning && asked.Count > 0
            ? visit.IsLeftOutOfUse ? look.Missing(message, asked) : look.Unsafe(message).AndMissing(asked)
            : look.Advisory(message).AndMissing(needsDecision ? asked : []);
        return verdict.Warn(Cautions.CarbonMonoxide).Advise(Remedy);
    }

    /// <summary>As above for a reading that sets no danger by itself: an advisory at every visit.</summary>
    public static Verdict OffTheSetting(this Look look, Visit visit, FormattableString message, bool isMeasuredAgain) =>
        look.Advisory(message).AndMissing(look.DecisionAsked(visit, isMeasuredAgain)).Warn(Cautions.CarbonMonoxide).Advise(Remedy);

    private static IReadOnlyList<string> DecisionAsked(this Look look, Visit visit, bool isMeasuredAgain) =>
        look.Note(visit.Maker.DecisionReference) is null && !isMeasuredAgain && !visit.IsMadeADefect(look.Subject, Topics.Combustion) ? ["/makerLimits/decisionReference"] : [];
}
