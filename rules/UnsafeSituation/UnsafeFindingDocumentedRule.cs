using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Rules.Situation;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.UnsafeFindingDocumented), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "34")]
[Title("The defect that answers an unsafe finding carries class, action, label and notice")]
[Why("Recorded without its classification, action, label or notice, a defect leaves open whether the household was protected at all. If harm follows, these are the steps an investigator will look for.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "each answering defect is judged")]
public sealed class UnsafeFindingDocumentedRule : InferenceRule
{
    public override void Define()
    {
        Visit visit = default!;
        RecordedDefect defect = default!;

        When()
            .Match(() => visit)
            .Match(() => defect, d => HasGap(d))
            .Exists<Finding>(f => DangerWords.IsObserved(f), f => defect.Answers(f));

        Then()
            .Do(context => Conclude(context, visit, defect.Pointer, Undocumented(defect)));
    }

    private static bool HasGap(RecordedDefect defect) => GapsOf(defect).Any();

    private static Verdict Undocumented(RecordedDefect defect)
    {
        var gaps = GapsOf(defect).ToList();
        return Visit.LookAt(defect.Pointer)
            .Missing($"the defect answers an unsafe finding, and this is not shown of it: {string.Join(", ", gaps.Select(gap => gap.Name))}", [.. gaps.Select(gap => $"{defect.Pointer}/{gap.Member}")])
            .Warn(Cautions.DangerStands)
            .Advise("Class it, make it safe with permission, fix the label, give the notice, and record all of it.");
    }

    private static IEnumerable<(string Name, string Member)> GapsOf(RecordedDefect recorded)
    {
        var defect = recorded.Defect;
        if (defect.Class is null)
            yield return ("class", "class");
        if (defect.Action is null)
            yield return ("action", "action");
        if (defect.Labelled != true)
            yield return ("warning label", "labelled");
        if (string.IsNullOrWhiteSpace(defect.NoticeNumber))
            yield return ("warning notice", "noticeNumber");
    }
}
