using Findings;
using Kernel;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.TerminalGuard), Topic(Topics.Flue), Cites("BS-5440", "1")]
[Title("A low flue terminal has a guard")]
[Why("Children can reach a low terminal, and it may be hot enough to burn them. Knocked out of line or stuffed with rubbish, it can also send products back towards the boiler.")]
[Serves(Part.Terminal, AtMost = Weight.Should)]
[Uses(LimitIds.TerminalGuardHeight)]
[Coverage(Coverage.MayOverReport, "a low terminal that nobody can reach may need none")]
public sealed class TerminalGuardRule : VisitRule
{
    protected override string SubjectPointer => "/flue";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Flue?.TerminalGuarded) == true)
            return look.Pass($"the terminal has a guard");
        if (look.Lacks(visit.Record.Flue?.TerminalHeightMm, out var height))
            return look.Missing();

        var limit = visit.Limits[LimitIds.TerminalGuardHeight];
        if (limit.Allows(height))
            return look.Pass($"the terminal is {height} mm above ground and needs no guard").Against(limit, height);
        if (look.Lacks(visit.Record.Flue?.TerminalGuarded, out _))
            return look.Missing();

        return look.Advisory($"the terminal is {height} mm above ground, below {limit.Min}, and has no guard").Against(limit, height)
            .Warn("A hot terminal within reach burns, and one that is struck or stuffed can let products back in.").Advise("Fit the maker's terminal guard.");
    }
}
