using RuleModel;
using ServiceRecords;

namespace Rules;

/// <summary>A rule on each flue reading at maximum rate after the work. A reading that does not say at which rate is among them and is asked.</summary>
public abstract class MaximumReadingRule : FlueReadingRule
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) =>
        visit.ReadingsAfterWork?.Where(reading => reading.Value.Rate != FiringRate.Minimum);

    protected sealed override Verdict Judge(CombustionReading reading, Visit visit, Look look) =>
        look.Lacks(reading.Rate, out _) ? look.Missing() : JudgeAtMaximum(reading, visit, look);

    protected abstract Verdict JudgeAtMaximum(CombustionReading reading, Visit visit, Look look);

    protected override Verdict WhenNone(Visit visit, Look look) =>
        look.Missing($"no flue reading at maximum rate was taken after the work", "/combustion/readings");
}
