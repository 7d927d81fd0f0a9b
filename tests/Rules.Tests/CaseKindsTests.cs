using Findings;
using Kernel;
using Visits.Judging;

namespace Rules.Tests;

/// <summary>The cases beside a rule show every kind of answer that it can give, and its limit from both sides.</summary>
public sealed class CaseKindsTests
{
    /// <summary>What no case can show, each for its reason.</summary>
    private static readonly Dictionary<string, string> CannotShow = new(StringComparer.Ordinal)
    {
        ["at-risk-recorded: pass"] = "a floor: a recorded danger never passes",
        ["immediately-dangerous-recorded: pass"] = "a floor: a recorded danger never passes",
        ["vessel-volume: on the limit"] = "the volume needed is computed from water densities and has no round value",
        ["tightness-gauge: on the limit"] = "a gauge's resolution is compared with two limits and finer is always better",
        ["plate-basis: beyond the limit"] = "the suspicion lies inside the band in which gross and net are confused",
    };

    public static TheoryData<string> RuleIdsOfAll => [.. RuleSet.Catalogue.Rules.Select(rule => rule.Info.Id)];

    [Theory]
    [MemberData(nameof(RuleIdsOfAll))]
    public void Cases_show_every_kind_of_answer(string ruleId)
    {
        var answers = RuleSet.Cases.Where(pair => pair.Rule.Info.Id == ruleId)
            .SelectMany(pair => RuleSet.AnswersOf(ruleId, RuleSet.EngineOf(pair.Rule).AnswersTo(RuleSet.RecordOf(pair.Case), lookup: pair.Case.Beside()))).ToList();
        var isMeasured = answers.Exists(answer => answer.Margin is not null);

        var kinds = new (string Kind, bool IsShown)[]
        {
            ("pass", answers.Exists(answer => answer.Outcome == Outcome.Pass)),
            ("problem", answers.Exists(answer => answer.Outcome <= Outcome.Advisory)),
            ("on the limit", !isMeasured || answers.Exists(answer => answer.Margin == 0)),
            ("beyond the limit", !isMeasured || answers.Exists(IsBeyond)),
        };
        Assert.All(kinds, kind => Assert.True(kind.IsShown || CannotShow.ContainsKey($"{ruleId}: {kind.Kind}"), $"no case shows: {kind.Kind}"));
    }

    private static bool IsBeyond(Finding answer) => answer.Margin < 0 || (answer.Margin == 0 && answer.Limit!.MaxExcluded == true);
}
