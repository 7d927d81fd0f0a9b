using Findings;
using Kernel;
using Records;
using Rules.Duties;
using Rules.Interval;
using Rules.Situation;
using Rules.Tightness;
using Visits;

namespace Rules.Law;

/// <summary>What figures, history and store ask of the law.</summary>
public sealed class VisitLaw : IVisitLaw
{
    /// <inheritdoc />
    public string ConformityGuard => LimitIds.ConformityGuard;

    /// <inheritdoc />
    public string DriftLoadDifference => LimitIds.DriftLoadDifference;

    /// <inheritdoc />
    public string HighestFlowTemperature => LimitIds.HighestFlowTemperature;

    /// <inheritdoc />
    public string ReliefMargin => LimitIds.ReliefMargin;

    /// <inheritdoc />
    public string OpenFlueVentPerKw => LimitIds.OpenFlueVentPerKw;

    /// <inheritdoc />
    public string LeakageInput => LimitIds.LeakageInput;

    /// <inheritdoc />
    public string InnerRoomShare => LimitIds.InnerRoomShare;

    /// <inheritdoc />
    public int FewestYearsKept => LandlordsRecords.FewestYearsKept;

    /// <inheritdoc />
    public int ChecksThatEndKeeping => LandlordsRecords.ChecksThatEndKeeping;

    /// <inheritdoc />
    public bool IsLandlords(ServiceRecord record) => LandlordsRecords.IsLandlords(record);

    /// <inheritdoc />
    public bool IsLandlordsCheck(ServiceRecord record, Evaluation said) => LandlordsRecords.IsCheck(record, said);

    /// <inheritdoc />
    public bool HasLandlordsWindow(Visit visit) => LandlordClock.HasWindow(visit);

    /// <inheritdoc />
    public PermittedDropFound? PermittedDropOf(TightnessTest test, string subject, Visit visit) => PermittedDrop.Found(test, subject, visit);

    /// <inheritdoc />
    public string? ReasonNotDone(Visit visit, string pointer, IReadOnlyList<ServesAttribute> parts, Silence silence) => Reasons.WordsFor(visit, pointer, parts, silence);

    /// <inheritdoc />
    public bool IsDealtWith(Visit visit, Finding finding)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.RecordedDefects.Any(recorded => recorded.Answers(finding) && Handling.IsDealtWith(recorded, finding, visit));
    }

    /// <inheritdoc />
    public string ClosesAs(Visit visit, IReadOnlyList<Duty> duties, OverallOutcome outcome) => Duties.ClosesAs.Of(visit, duties, outcome);

    /// <inheritdoc />
    public IReadOnlyList<DueDate> DueDatesOf(Visit visit, Evaluation? said = null) => DueDates.Of(visit, said);
}
