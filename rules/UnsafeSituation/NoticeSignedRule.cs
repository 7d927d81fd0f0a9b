using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.NoticeSigned), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Title("The responsible person signs the warning notice, unless nobody is there")]
[Why("A signature settles afterwards whether the warning reached the responsible person. Asking for it also has them read what it says before the engineer goes.")]
[Serves(Part.HandleDanger)]
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
