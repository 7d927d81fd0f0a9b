using Findings;
using Kernel;
using Visits;

namespace Rules.Electrical;

[Id(RuleIds.EarthContinuity), Topic(Topics.Electrical), CommonPractice]
[Title("The boiler is earthed, with a low resistance where it was measured")]
[Why("Unless the boiler is earthed, one electrical fault can leave its case and pipework live and no fuse blows. Flame sensing commonly uses the same path, so a poor earth can cause lock-outs too.")]
[Serves(Part.EarthAndPolarity)]
[Uses(LimitIds.EarthPathUnsafe, LimitIds.EarthPathDoubtful, LimitIds.EarthContinuity)]
[Coverage(Coverage.MayUnderReport, "the resistance of the test lead is unknown, and an unmeasured path is believed")]
public sealed class EarthContinuityRule : VisitRule
{
    protected override string SubjectPointer => "/electrical";

    protected override Verdict Assess(Visit visit, Look look)
    {
        var measured = look.Note(visit.Record.Electrical?.EarthOhm);

        // So poor a path is none, whatever is ticked beside it.
        var none = visit.Limits[LimitIds.EarthPathUnsafe];
        if (measured is { } open && !none.Allows(open))
            return NoEarth(look.Unsafe($"the earth path measures {open} ohm, above {none.Max}: that is no earth")).Against(none, open);
        if (visit.Record.Electrical?.EarthOk == false)
            return NoEarth(look.Unsafe($"the boiler is not earthed"));

        var doubtful = visit.Limits[LimitIds.EarthPathDoubtful];
        if (measured is { } poor && !doubtful.Allows(poor))
            return InDoubt(poor, doubtful, visit, look);
        if (look.Lacks(visit.Record.Electrical?.EarthOk, out _))
            return look.Missing();
        if (measured is not { } ohm)
            return look.Pass($"the earth of the boiler is continuous");

        var limit = visit.Limits[LimitIds.EarthContinuity];
        return (limit.Allows(ohm)
            ? look.Pass($"the earth path measures {ohm} ohm, at most {limit.Max}")
            : look.Advisory($"the earth path measures {ohm} ohm, above {limit.Max}, and is recorded as right")
                .Warn(Cautions.ElectricShock).Advise("Find the poor connection and measure again."))
            .Against(limit, ohm);
    }

    private static Verdict InDoubt(decimal ohm, Limit doubtful, Visit visit, Look look)
    {
        var isTicked = look.Note(visit.Record.Electrical?.EarthOk) == true;
        var asked = visit.AskedUnlessADefect("/electrical/earthOk", "/electrical", Topics.Electrical);
        return (asked.Count == 0
            ? look.Advisory($"the earth path measures {ohm} ohm, which is to be below {doubtful.Max}, and a defect is recorded")
            : look.Missing($"the earth path measures {ohm} ohm, which is to be below {doubtful.Max}: whether a fault would blow the fuse is in doubt", asked).Contradicting(isTicked ? [Part.EarthAndPolarity] : []))
            .Against(doubtful, ohm).Warn(Cautions.ElectricShock).Advise("Find the poor connection and measure again, or record the earth as not right.");
    }

    private static Verdict NoEarth(Verdict verdict) =>
        verdict.Warn(Cautions.ElectricShock).Advise("Isolate the boiler and have the earth put right before it runs.");
}
