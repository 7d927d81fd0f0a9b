using Findings;

namespace Visits;

/// <content>What stands in the way of closing the job.</content>
public sealed partial class Visit
{
    /// <inheritdoc />
    public override bool IsDealtWith(Finding finding) =>
        RecordedDefects.Any(defect => IsLeftOutOfUse ? defect.SettlesOutOfUse(finding) : defect.SettlesInUse(finding));

    /// <summary>
    /// A job can be closed on a dangerous boiler once the record shows that it was made safe; what only a boiler in use can show is then
    /// not waited for.
    /// </summary>
    public override bool IsWaitedFor(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return !(IsMadeSafe && Topics.NeedAnApplianceInUse.Contains(finding.Topic));
    }

    private bool IsMadeSafe => _isMadeSafe ??= IsLeftOutOfUse && RecordedDefects.Any(defect => defect.IsDangerous && (defect.IsTakenOutOfUse || defect.IsRefusalDealtWith()));

    private bool? _isMadeSafe;
}
