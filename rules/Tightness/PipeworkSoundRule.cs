using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.PipeworkSound), Topic(Topics.Tightness), Cites("GSIUR-1998", "7")]
[Title("The visible gas pipework is sound, without damage or corrosion")]
[Why("Corrosion thins a pipe and a knock loosens a joint some time before gas gets out. Seen today it is a repair; left alone it can become an escape in an occupied house.")]
[Serves(Part.Pipework)]
[Serves(Part.Pipework, AtMost = Weight.Should, Of = "/pipework/damageOrCorrosion")]
[Coverage(Coverage.MayUnderReport, "only what can be seen is recorded")]
public sealed class PipeworkSoundRule : VisitRule
{
    private static readonly string[] Asked = ["/pipework/visualOk", "/pipework/damageOrCorrosion"];

    protected override string SubjectPointer => "/pipework";

    protected override Verdict Assess(Visit visit, Look look)
    {
        var visual = look.Note(visit.Record.Pipework?.VisualOk);
        var damaged = look.Note(visit.Record.Pipework?.DamageOrCorrosion);
        if (visual == false || damaged == true)
        {
            return look.Advisory($"the visible gas pipework is damaged, corroded or otherwise not sound")
                .AndMissing(visit.AskedUnlessADefect("/defects", "/pipework", Topics.Tightness, Topics.GasPressure, Topics.Joints))
                .Warn(Cautions.EscapingGas).Advise("Test for tightness, and repair. Where it leaks or is likely to fail, classify it by the unsafe-situations procedure.");
        }

        if (visual == true && damaged == false)
            return look.Pass($"the visible gas pipework is sound");

        // Neither a repair nor, by law, the landlord's yearly check covers the pipework; looking at it is recommended.
        return visit.Record.JobType is JobType.AnnualService or JobType.Commissioning
            ? look.Missing($"the record does not say whether the visible gas pipework is sound",
                [.. Asked.Where(visit.Lacks)])
            : look.Advisory($"the record shows no look at the gas pipework");
    }
}
