using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

/// <summary>Unsafe situations as they follow from what the other rules found; the findings are given.</summary>
internal static class InferenceOpinions
{
    private static readonly HashSet<string> Burning = [Topics.Combustion, Topics.Flue, Topics.Ventilation, Topics.AmbientAir];

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("advisories-together", Called(AdvisoriesTogether)),
        ("class-lower-than-expected", Called(c => Each(c, defect => IsLow(c, defect) ? Outcome.Advisory : null))),
        ("low-class-without-action", Called(c => Each(c, defect => IsLow(c, defect) && defect.Is.Action is null or DefectAction.None ? Outcome.Missing : null))),
        ("unsafe-finding-answered", Called(Answered)),
        ("unsafe-left-in-use", Called(LeftInUse)),
    ];

    /// <summary>Nothing to advise on, nothing unsafe, no defect and no danger told before: nothing to infer from.</summary>
    public static Func<Case, IEnumerable<Opinion>> Called(Func<Case, IEnumerable<Opinion>> judge) =>
        c => If(c.Record.Defects is { Count: > 0 } || c.SaidBefore.Count > 0 || c.FirstPass.Any(finding => finding.Outcome is Outcome.Unsafe or Outcome.Advisory), () => judge(c));

    private static IEnumerable<Opinion> Each(Case c, Func<PlacedDefect, Outcome?> judge)
    {
        var defects = PlacedDefect.Of(c).ToList();
        return Reply.Each(c.Record.Defects ?? [], "/defects", (_, place) => judge(defects[place]), Outcome.Pass);
    }

    private static IEnumerable<Finding> Unsafe(Case c) => c.FirstPass.Where(finding => finding.Outcome == Outcome.Unsafe);

    private static IEnumerable<Opinion> AdvisoriesTogether(Case c)
    {
        var rules = c.FirstPass.Where(finding => finding.Outcome == Outcome.Advisory && Burning.Contains(finding.Topic) && !IsOnlyUnsure(c, finding)).Select(finding => finding.RuleId);
        return On("", Pass(c.Limit("advisories-together")!.Holds(rules.Distinct(StringComparer.Ordinal).Count())));
    }

    // Inside its limit, and advised on only because the instrument cannot tell well enough.
    private static bool IsOnlyUnsure(Case c, Finding finding) =>
        finding is { Margin: >= 0, Conformity: { } sure } && !c.Limit("conformity-guard")!.Holds(sure);

    // What is said of a defect itself follows from its class on record and proves nothing against it.
    private static IEnumerable<Finding> Observed(Case c) => Unsafe(c).Where(finding => !finding.Subject.StartsWith("/defects/", StringComparison.Ordinal));

    private static bool IsLow(Case c, PlacedDefect defect) => defect.Is.Class is { } recorded && Observed(c).Where(defect.Answers).Any(finding =>
        recorded == DefectClass.Other || (recorded == DefectClass.AtRisk && finding.ExpectedClass == ExpectedClass.ImmediatelyDangerous));

    private static IEnumerable<Opinion> Answered(Case c)
    {
        var open = Unsafe(c).Where(finding => !PlacedDefect.Of(c).Any(defect => defect.Answers(finding))).Select(finding => finding.Subject).ToHashSet(StringComparer.Ordinal);
        return open.Count > 0 ? open.Select(subject => new Opinion(subject, Outcome.Missing)) : On("", Outcome.Pass);
    }

    // What the record shows is as it was left: no word of a defect puts it right. Of a defect itself, put right and shown right is no danger.
    // The engineer's own class is a floor.
    private static IEnumerable<Opinion> LeftInUse(Case c)
    {
        var defects = PlacedDefect.Of(c).ToList();
        var open = Unsafe(c).Where(finding => !defects.Any(defect => defect.Answers(finding)
            && (defect.IsLeftByRefusal(finding) || defect.TakesOutOfUse(finding) || (!defect.IsOfThisBoiler && finding.Subject == defect.Pointer)))).ToList();
        if (open.Count == 0 || c.IsLeftOff())
            return On("", Outcome.Pass);

        var answer = On("/appliance/stateOnLeaving", c.Record.Appliance.StateOnLeaving is null ? Outcome.Missing : Outcome.Unsafe);
        return open.Any(finding => finding.ExpectedClass == ExpectedClass.ImmediatelyDangerous
            || defects.Any(defect => defect.Is.Class == DefectClass.ImmediatelyDangerous && defect.Answers(finding))) ? Immediately(answer) : answer;
    }
}
