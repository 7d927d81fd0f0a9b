using Findings;
using Kernel;
using Records;
using Visits;
using Wire;

namespace Rules.History;

[Id(RuleIds.DefectNotedBefore), Topic(Topics.UnsafeSituation), CommonPractice]
[Title("A defect that was noted at the visit before is put right")]
[Why("A defect noted twice was left as it was, or its repair did not last. Whoever has been told once and done nothing may take the warning for routine, so it needs saying again.")]
[Serves(Part.WhereRecorded)]
[Expects("/defects")]
[Coverage(Coverage.MayUnderReport, "the same defect in other words is not recognised")]
public sealed class DefectNotedBeforeRule : ComplianceRule<Defect>
{
    protected override IEnumerable<Subject<Defect>>? Subjects(Visit visit) => Before(visit) is null ? [] : visit.Defects;

    protected override Verdict WhenNone(Visit visit, Look look) => Before(visit) is null
        ? look.NotApplicable($"no earlier visit is known")
        : look.NotApplicable($"no defect is recorded");

    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        look.Note(defect.Topic);
        look.Note(defect.Location);
        look.Note(defect.Description);
        var before = Before(visit)!;
        var noted = before.Defects?.FirstOrDefault(earlier => IsSame(earlier, defect));
        if (noted is null)
            return look.Pass($"the defect is not among those noted on {before.Date}");
        if (look.Note(defect.Action) == DefectAction.Rectified)
            return look.Pass($"the defect was noted on {before.Date} too and is put right now");

        return noted.Action == WireNames.Of(DefectAction.Rectified)
            ? look.Advisory($"the defect was noted on {before.Date} too, was put right then, and is there again")
                .Advise("Look for what brings the defect back.")
            : look.Advisory($"the defect was noted on {before.Date} too and was not put right in between")
                .Advise("Have the defect put right, or tell the responsible person once more in writing why it cannot wait.");
    }

    // What a record states of its previous visit itself says nothing of defects.
    private static PastVisit? Before(Visit visit) => visit.Record.PreviousVisit is null ? visit.DayBefore() : null;

    private static bool IsSame(PastDefect earlier, Defect now) =>
        IsSame(earlier.Description, now.Description)
        || (IsSame(earlier.Topic, now.Topic) && IsSame(earlier.Location, now.Location));

    private static bool IsSame(string? one, string? other) =>
        !string.IsNullOrWhiteSpace(one) && string.Equals(one.Trim(), other?.Trim(), StringComparison.OrdinalIgnoreCase);
}
