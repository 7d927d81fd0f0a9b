using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.TightnessTestDated), Topic(Topics.Plausibility), Cites("GSIUR-1998", "6(6)")]
[Title("No tightness test is dated after the visit")]
[Why("Dated after the visit, a tightness test was either written down wrongly or not yet made when the engineer left. Until that is cleared up, the joints opened that day have no proof of tightness.")]
[Serves(Part.TraceTests, AtMost = Weight.Should)]
[Expects("/tightnessTests")]
[Coverage(Coverage.Full, "two dates")]
public sealed class TightnessTestDatedRule : ComplianceRule<TightnessTest>
{
    protected override IEnumerable<Subject<TightnessTest>>? Subjects(Visit visit) => visit.TightnessTests;

    protected override Verdict Assess(TightnessTest test, Visit visit, Look look)
    {
        // Undated, a test is one of this visit. That it is not older than the work is a rule on tightness.
        var testedOn = look.Note(test.TestedOn) ?? visit.Date;
        return testedOn <= visit.Date
            ? look.Pass($"the tightness test is of {testedOn}")
            : look.Missing($"the tightness test is dated {testedOn}, after the visit of {visit.Date}, so it shows nothing of it", $"{look.Subject}/testedOn")
                .Advise("Record the test that was made, with its own day.");
    }
}
