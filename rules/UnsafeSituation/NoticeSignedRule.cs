using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Name(RuleIds.NoticeSigned), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Description("The responsible person signs the warning notice, unless nobody is there")]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class NoticeSignedRule : StandingDangerRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look)
    {
        if (look.Note(defect.UserSigned) == true)
            return look.Pass($"the responsible person signed the warning notice");

        return look.Note(defect.Permission) == Consent.NobodyPresent
            ? look.Pass($"nobody was there to sign the warning notice")
            : look.Advisory($"no signature of the responsible person on the warning notice is recorded")
                .Advise("Ask for the signature; where it is refused, note that.");
    }
}
