using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.UserToldNotToUse), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "34(3)"), Cites("IGEM-G-11")]
[Title("The responsible person is told not to use a dangerous appliance; where nobody is there, the notice is left")]
[Why("Unless they are told, people turn a cold boiler back on. Regulation 34 forbids the responsible person to use an appliance known or suspected to be dangerous, and has the engineer who finds one tell them.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class UserToldNotToUseRule : StandingDangerRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look)
    {
        if (look.Note(defect.Permission) == Consent.NobodyPresent)
        {
            return look.Note(defect.CopyLeft) == true
                ? look.Pass($"nobody was there, and a copy of the notice was left")
                : Untold(look.Missing($"nobody was there to be told, and no copy of the notice is recorded as left", $"{look.Subject}/copyLeft"));
        }

        return look.Note(defect.UserToldNotToUse) == true
            ? look.Pass($"the responsible person was told not to use the appliance")
            : Untold(look.Missing($"the record does not show that the responsible person was told not to use an appliance classed as {classed}", $"{look.Subject}/userToldNotToUse"));
    }

    private static Verdict Untold(Verdict verdict) => verdict.Warn(Cautions.DangerStands).Advise("Tell the responsible person now, or leave the notice where it is found, and record it.");
}
