using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.WarningNotice), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Title("A warning notice is written for a dangerous appliance that is not put right")]
[Why("Spoken warnings are disputed as soon as somebody is hurt. A written notice sets out the danger and the instruction not to use the appliance, in the same words for user, owner and engineer.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class WarningNoticeRule : StandingDangerRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look) => look.Note(defect.NoticeNumber) is { } number
        ? look.Pass($"warning notice {number} was written")
        : look.Missing($"no warning notice is recorded for a defect classed as {classed}", $"{look.Subject}/noticeNumber").Advise("Write the notice, leave a copy and keep one.");
}
