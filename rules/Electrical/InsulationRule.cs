using Findings;
using Kernel;
using Visits;

namespace Rules.Electrical;

[Id(RuleIds.Insulation), Topic(Topics.Electrical), CommonPractice]
[Title("Insulation resistance, where it was measured, is high")]
[Why("Damp or chafed wiring leaks current to the metalwork before it fails outright. Left alone it can trip the supply, burn out a circuit board or give somebody a shock.")]
[Serves(Part.Electrics)]
[Uses(LimitIds.InsulationResistance)]
[Coverage(Coverage.MayUnderReport, "judged only where it was measured")]
public sealed class InsulationRule : VisitRule
{
    protected override string SubjectPointer => "/electrical";

    protected override Verdict Assess(Visit visit, Look look)
    {
        // Measured when something gives cause; polarity and earth are what every visit looks at.
        if (look.Note(visit.Record.Electrical?.InsulationMegohm) is not { } megohm)
        {
            return look.Lacks(visit.Record.Electrical?.PolarityOk, out _) | look.Lacks(visit.Record.Electrical?.EarthOk, out _)
                ? look.Missing()
                : look.Pass($"insulation was not measured; polarity and earth are judged on their own");
        }

        var limit = visit.Limits[LimitIds.InsulationResistance];
        return (limit.Allows(megohm)
            ? look.Pass($"the insulation measures {megohm} megohm, at least {limit.Min}")
            : look.Advisory($"the insulation measures {megohm} megohm, below {limit.Min}")
                .Warn(Cautions.ElectricShock).Advise("Isolate the boiler, find the damp or damaged part and measure again."))
            .Against(limit, megohm);
    }
}
