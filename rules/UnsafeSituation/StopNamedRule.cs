using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.StopNamed), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "26(9)")]
[Title("A job that was stopped for a danger names the danger as a defect")]
[Why("Whoever comes next, the occupier and the owner have to know what stopped the job. A danger that no defect names is classed by nobody, made known to nobody and put right by nobody.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.MayUnderReport, "whether the defect that is recorded is the one that stopped the job is for the person on site")]
public sealed class StopNamedRule : VisitRule
{
    protected override string SubjectPointer => "/defects";

    protected override bool? Applies(Visit visit) => visit.Record.Work?.Result == WorkResult.StoppedForDanger;

    protected override Verdict Assess(Visit visit, Look look) => visit.RecordedDefects.Count > 0
        ? look.Pass($"the job was stopped for a danger, and a defect is recorded")
        : look.Missing($"the job was stopped for a danger, and no defect says which", "/defects")
            .Warn(Cautions.DangerStands).Advise("Record the danger as a defect, with its class and what was done about it.");
}
