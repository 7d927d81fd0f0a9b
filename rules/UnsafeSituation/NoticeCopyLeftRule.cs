using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.NoticeCopyLeft), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Title("A copy of the warning notice is left at the premises")]
[Why("The household needs the exact words to arrange a repair and to warn others who live there. Where nobody was in, the copy on site may be the first warning they get.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class NoticeCopyLeftRule : StandingDangerRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look) => look.Note(defect.CopyLeft) == true
        ? look.Pass($"a copy of the warning notice was left")
        : look.Advisory($"no copy of the warning notice is recorded as left").Advise("Leave a copy of the notice and keep one.");
}
