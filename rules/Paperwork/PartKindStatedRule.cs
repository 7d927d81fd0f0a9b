using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.PartKindStated), Topic(Topics.Paperwork), CommonPractice]
[Title("The record says of each part that was fitted what kind of part it is")]
[Why("A gas valve, a fan and a pump each call for other tests once they are in. A part without a kind would call for none, and whatever it disturbed would go unproved.")]
[Expects("/partsFitted")]
[Coverage(Coverage.Full, "each part that is listed is judged")]
public sealed class PartKindStatedRule : ComplianceRule<FittedPart>
{
    protected override IEnumerable<Subject<FittedPart>>? Subjects(Visit visit) => Kernel.Subjects.Of("/partsFitted", visit.Record.PartsFitted) ?? [];

    protected override Verdict Assess(FittedPart part, Visit visit, Look look)
    {
        if (look.Lacks(part.Kind, out var kind))
            return look.Missing($"the record does not say what kind of part was fitted");

        return kind == PartKind.Other
            ? look.Missing($"a part of no listed kind was fitted, so nobody can tell what it disturbed", $"{look.Subject}/kind")
                .Advise("Choose the kind of part that comes nearest by what had to be opened to fit it.")
            : look.Pass($"the kind of the part is recorded");
    }
}
