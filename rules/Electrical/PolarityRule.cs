using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Electrical;

[Id(RuleIds.Polarity), Topic(Topics.Electrical), CommonPractice]
[Title("Live and neutral are the right way round")]
[Why("With live and neutral reversed, the fuse and any single-pole switch break the neutral. Parts inside can then stay live with the boiler switched off, and some boilers no longer sense their flame.")]
[Serves(Part.EarthAndPolarity)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class PolarityRule : VisitRule
{
    protected override string SubjectPointer => "/electrical";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Electrical?.PolarityOk, out var right))
            return look.Missing();

        return right
            ? look.Pass($"live and neutral are the right way round")
            : look.Unsafe($"live and neutral are reversed")
                .Warn(Cautions.ElectricShock).Advise("Isolate the boiler and have the wiring put right before it runs.");
    }
}
