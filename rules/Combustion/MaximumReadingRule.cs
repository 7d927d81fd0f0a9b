using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Combustion;

/// <summary>A rule on each flue reading at maximum rate after the work. A reading that does not say at which rate is among them and is asked.</summary>
public abstract class MaximumReadingRule : FlueReadingRule
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) =>
        visit.ReadingsAfterWork?.Where(reading => reading.Value.Rate != FiringRate.Minimum);

    protected sealed override Verdict Judge(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.Rate, out _))
            return look.Missing();

        // The load need not be recorded; one that is must not deny the rate. What is a danger is one at any rate.
        var verdict = JudgeAtMaximum(reading, visit, look);
        return verdict.Outcome != Outcome.Unsafe && visit.DeniesItsRate(reading)
            ? look.Missing($"the reading is recorded as one at maximum rate and at {look.Note(reading.LoadPercent)} % load, so it does not show maximum rate", $"{look.Subject}/loadPercent")
                .Advise("Let the boiler settle at maximum rate and read the flue again.")
            : verdict;
    }

    protected abstract Verdict JudgeAtMaximum(CombustionReading reading, Visit visit, Look look);

    protected override Verdict WhenNone(Visit visit, Look look) =>
        look.Missing($"no flue reading at maximum rate was taken after the work", "/combustion/readings");
}
