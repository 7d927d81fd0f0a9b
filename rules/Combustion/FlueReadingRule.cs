using RuleModel;
using ServiceRecords;

namespace Rules;

/// <summary>
/// A rule on each flue reading taken after the work. Readings before the work explain and never decide; a reading that does not say
/// when it was taken is asked; and while products reach the air inlet no reading counts.
/// </summary>
public abstract class FlueReadingRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.ReadingsAfterWork;

    protected sealed override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.Stage, out _))
            return look.Missing();

        return visit.ProductsReachTheAirInlet()
            ? look.Missing($"products reach the air inlet, so this flue reading does not count", "/combustion/airInlet")
            : Judge(reading, visit, look);
    }

    protected abstract Verdict Judge(CombustionReading reading, Visit visit, Look look);

    protected override Verdict WhenNone(Visit visit, Look look) =>
        look.Missing($"no flue reading was taken after the work", "/combustion/readings");
}
