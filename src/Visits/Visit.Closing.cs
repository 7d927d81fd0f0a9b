using Findings;
using Kernel;
using Wire;

namespace Visits;

/// <content>What stands in the way of closing the job.</content>
public sealed partial class Visit
{
    /// <inheritdoc />
    public override bool IsDealtWith(Finding finding) => Law.IsDealtWith(this, finding);

    /// <inheritdoc />
    public override string? LeftAs => WireNames.Of(Appliance.StateOnLeaving);

    /// <inheritdoc />
    public override string? ReasonNotDone(string pointer, IReadOnlyList<ServesAttribute> parts, Silence silence) => Law.ReasonNotDone(this, pointer, parts, silence);

    /// <inheritdoc />
    public override string ClosesAs(IReadOnlyList<Duty> duties, OverallOutcome outcome) => Law.ClosesAs(this, duties, outcome);

    /// <summary>A recorded danger was taken out of use, or its refusal dealt with, and the boiler was left off.</summary>
    public bool IsMadeSafe => _isMadeSafe ??= IsLeftOutOfUse && RecordedDefects.Any(defect => defect.IsDangerous && (defect.IsTakenOutOfUse || defect.IsRefusalDealtWith));

    private bool? _isMadeSafe;
}
