using Findings;
using Kernel;
using Visits;

namespace Rules.Electrical;

[Id(RuleIds.EarthContinuity), Topic(Topics.Electrical), CommonPractice]
[Title("The boiler is earthed, with a low resistance where it was measured")]
[Why("Unless the boiler is earthed, one electrical fault can leave its case and pipework live and no fuse blows. Flame sensing commonly uses the same path, so a poor earth can cause lock-outs too.")]
[Serves(Part.EarthAndPolarity)]
[Uses(LimitIds.EarthPath, LimitIds.EarthContinuity)]
[Coverage(Coverage.MayUnderReport, "the resistance of the test lead is unknown, and an unmeasured path is believed")]
public sealed class EarthContinuityRule : VisitRule
{
    protected override string SubjectPointer => "/electrical";

    protected override Verdict Assess(Visit visit, Look look)
    {
        var measured = look.Note(visit.Record.Electrical?.EarthOhm);

        // So poor a path is none, whatever is ticked beside it.
        var path = visit.Limits[LimitIds.EarthPath];
        if (measured is { } open && !path.Allows(open))
            return NoEarth(look.Unsafe($"the earth path measures {open} ohm, above {path.Max}: that is no earth")).Against(path, open);
        if (look.Lacks(visit.Record.Electrical?.EarthOk, out var earthed))
            return look.Missing();
        if (!earthed)
            return NoEarth(look.Unsafe($"the boiler is not earthed"));
        if (measured is not { } ohm)
            return look.Pass($"the earth of the boiler is continuous");

        var limit = visit.Limits[LimitIds.EarthContinuity];
        return (limit.Allows(ohm)
            ? look.Pass($"the earth path measures {ohm} ohm, at most {limit.Max}")
            : look.Advisory($"the earth path measures {ohm} ohm, above {limit.Max}, and is recorded as right")
                .Warn(Cautions.ElectricShock).Advise("Find the poor connection and measure again."))
            .Against(limit, ohm);
    }

    private static Verdict NoEarth(Verdict verdict) =>
        verdict.Warn(Cautions.ElectricShock).Advise("Isolate the boiler and have the earth put right before it runs.");
}
