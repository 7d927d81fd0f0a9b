using Findings;
using Kernel;
using Rules.Duties;
using Visits;

namespace Rules.Burner;

[Id(RuleIds.ElectrodesClean), Topic(Topics.Burner), CommonPractice]
[Title("The electrodes are clean")]
[Why("Dirt on an electrode drains away the spark and weakens the flame signal. A boiler that cannot light, or cannot prove its own flame, locks out and leaves the house without heat or hot water.")]
[Serves(Part.FireSideDetails)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class ElectrodesCleanRule : VisitRule
{
    protected override string SubjectPointer => "/burner";

    protected override bool? Applies(Visit visit) => visit.IsAnnualService;

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Burner?.ElectrodesClean, out var clean))
            return look.Missing();

        return clean
            ? look.Pass($"the electrodes are clean")
            : look.Advisory($"the electrodes are not clean").Warn(Cautions.MakerDecides).Advise("Clean or renew the electrodes, with a new seal where the maker asks for one.");
    }
}
