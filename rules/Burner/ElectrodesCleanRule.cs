using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Burner;

[Name(RuleIds.ElectrodesClean), Topic(Topics.Burner), CommonPractice]
[Description("The electrodes are clean")]
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
