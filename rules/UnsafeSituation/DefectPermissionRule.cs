using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.DefectPermission), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Title("The record says whether permission to make the appliance safe was given, and not that it was refused beside what was done")]
[Why("The boiler is the customer's, so turning it off or disconnecting it needs their consent. Where the record is silent or contradicts itself, nobody can show afterwards who decided that a danger was left or removed.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class DefectPermissionRule : DangerousDefectRule
{
    // Of what was put right nobody asks for the permission; a refusal beside it is another matter.
    protected override bool Concerns(Defect defect) =>
        defect.Action == DefectAction.Rectified ? defect.Permission == Consent.Refused : base.Concerns(defect);

    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look)
    {
        var action = look.Note(defect.Action);
        return look.Note(defect.Permission) switch
        {
            null => look.Advisory($"the record does not say whether permission to act was given")
                .Advise("Record whether permission was given, refused, or nobody was there."),
            Consent.Refused when action is not (null or DefectAction.None) =>
                look.Advisory($"permission is recorded as refused, and the action as {action}: one of the two is wrong").Advise("Correct the record."),
            { } permission => look.Pass($"permission is recorded: {permission}"),
        };
    }
}
