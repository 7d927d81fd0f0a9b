using Findings;
using Kernel;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.LowClassWithoutAction), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "34")]
[Title("A defect that is recorded lower than would be expected is at least acted on")]
[Why("Played down and left alone, a danger stays with the household exactly as it was found. A higher classification or some action would have changed that; with neither, nothing prevents the next use.")]
[Serves(Part.HandleDanger)]
[Follows(RuleIds.ClassLowerThanExpected)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class LowClassWithoutActionRule : InferenceRule
{
    public override void Define()
    {
        Visit visit = default!;
        RecordedDefect defect = default!;

        When()
            .Match(() => visit)
            .Match(() => defect, d => DangerWords.IsLeftAlone(d))
            .Exists<Conclusion>(c => c.RuleId == RuleIds.ClassLowerThanExpected, c => c.Subject == defect.Pointer);

        Then()
            .Do(context => Conclude(context, visit, defect.Pointer, LeftAlone(defect)));
    }

    private static Verdict LeftAlone(RecordedDefect defect) => Visit.LookAt(defect.Pointer)
        .Missing($"the defect is recorded lower than would be expected of an unsafe finding, and nothing is recorded as done about it", $"{defect.Pointer}/class", $"{defect.Pointer}/action")
        .Warn(Cautions.DangerStands)
        .Advise("Review the class, make the appliance safe with permission, and record what was done.");
}
