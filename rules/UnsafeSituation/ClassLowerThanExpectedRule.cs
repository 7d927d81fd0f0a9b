using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.ClassLowerThanExpected), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Title("No defect is recorded in a lower class than would be expected of the finding that it answers; the competent person on site decides")]
[Why("Classified too low, a danger is left in use when it calls for turning off, or turned off when it calls for disconnecting. The competent person on site decides and may have good reason, which the record then has to show.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.MayOverReport, "the person on site may have good reason")]
public sealed class ClassLowerThanExpectedRule : InferenceRule
{
    public override void Define()
    {
        Visit visit = default!;
        RecordedDefect defect = default!;
        IEnumerable<Finding> graver = default!;

        When()
            .Match(() => visit)
            .Match(() => defect)
            .Query(() => graver, q => q
                .Match<Finding>(f => DangerWords.IsRecordedLower(defect, f))
                .Collect()
                .Where(found => found.Any()));

        Then()
            .Do(context => Conclude(context, visit, defect.Pointer, Lower(defect, graver)));
    }

    private static Verdict Lower(RecordedDefect recorded, IEnumerable<Finding> graver)
    {
        var look = Visit.LookAt(recorded.Pointer);
        var defect = recorded.Defect;
        look.Note(defect.Class);
        var expected = graver.Max(finding => finding.ExpectedClass);
        var rules = string.Join(", ", graver.Select(finding => finding.RuleId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        return look.Advisory($"the defect is recorded as {defect.Class}, and {expected} would be expected of what it answers: {rules}")
            .Warn(Cautions.DangerStands)
            .Advise("Review the class by the unsafe-situations procedure; where it stays, note why.");
    }
}
