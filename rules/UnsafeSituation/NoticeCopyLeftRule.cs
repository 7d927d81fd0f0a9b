using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Name(RuleIds.NoticeCopyLeft), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Description("A copy of the warning notice is left at the premises")]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class NoticeCopyLeftRule : StandingDangerRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look) => look.Note(defect.CopyLeft) == true
        ? look.Pass($"a copy of the warning notice was left")
        : look.Advisory($"no copy of the warning notice is recorded as left").Advise("Leave a copy of the notice and keep one.");
}
