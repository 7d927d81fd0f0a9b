using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.DefectPermission), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Description("The record says whether permission to make the appliance safe was given")]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class DefectPermissionRule : StandingDangerRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look)
    {
        var action = look.Note(defect.Action);
        return look.Note(defect.Permission) switch
        {
            null => look.Advisory($"the record does not say whether permission to act was given")
                .Advise("Record whether permission was given, refused, or nobody was there."),
            Consent.Refused when action is DefectAction.Disconnected or DefectAction.TurnedOff =>
                look.Advisory($"permission is recorded as refused, and the action as {action}: one of the two is wrong").Advise("Correct the record."),
            { } permission => look.Pass($"permission is recorded: {permission}"),
        };
    }
}
