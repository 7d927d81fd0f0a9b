using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Combustion;

/// <summary>
/// A rule on each flue reading taken after the work. Readings before the work explain and never decide; a reading that does not say
/// when it was taken is asked; while products reach the air inlet no reading counts; and no reading that shows air says that anything is right.
/// </summary>
public abstract class FlueReadingRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.ReadingsAfterWork;

    protected sealed override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.Stage, out _))
            return look.Missing();

        if (visit.ProductsReachTheAirInlet())
            return look.Missing($"products reach the air inlet, so this flue reading does not count", "/combustion/airInlet");

        var verdict = Judge(reading, visit, look);
        if (verdict.Outcome == Outcome.Unsafe || visit.MemberThatShowsAir(reading) is not { } member)
            return verdict;

        look.Note(reading.Co2Percent);
        look.Note(reading.O2Percent);
        return look.Missing($"the reading shows air and not flue gas, so it says nothing of the burn", $"{look.Subject}/{member}")
            .Advise("Check the probe and its place in the flue, and read again with the boiler firing.");
    }

    protected abstract Verdict Judge(CombustionReading reading, Visit visit, Look look);

    protected override Verdict WhenNone(Visit visit, Look look) =>
        look.Missing($"no flue reading was taken after the work", "/combustion/readings");
}
