using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Name(RuleIds.WarningNotice), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Description("A warning notice is written for a dangerous appliance that is not put right")]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class WarningNoticeRule : StandingDangerRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look) => look.Note(defect.NoticeNumber) is { } number
        ? look.Pass($"warning notice {number} was written")
        : look.Advisory($"no warning notice is recorded for a defect classed as {classed}").Advise("Write the notice, leave a copy and keep one.");
}
