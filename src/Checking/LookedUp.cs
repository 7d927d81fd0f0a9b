using Findings;
using Records;
using Storage;
using Visits;

namespace Checking;

/// <summary>Puts together what was looked up beside a record, for one record and for many alike.</summary>
public static class LookedUp
{
    /// <summary>The lookup.</summary>
    /// <param name="record">The record.</param>
    /// <param name="profile">The profile that it names; null: none.</param>
    /// <param name="before">What was said of earlier visits with its serial number, and of this visit by other records.</param>
    public static Lookup Beside(ServiceRecord record, ApplianceProfile? profile, VisitsBefore before)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(before);
        var saidBefore = before.SaidBefore;

        // Readings are compared with the visit that the record states itself: the stored ones then matter by what they left alone.
        var earlier = record.PreviousVisit is null || before.Earlier.Any(HasLeftSomething) ? before.Earlier : [];
        return profile is null && earlier.Count == 0 && saidBefore.Count == 0
            ? Lookup.None
            : new Lookup
            {
                PreviousEvaluationId = record.PreviousVisit is null
                    ? earlier.FirstOrDefault(visit => VisitKey.OfName(visit.Maker) == VisitKey.OfName(record.Appliance.Maker))?.EvaluationId
                    : null,
                History = earlier.Count > 0 ? earlier : null,
                SaidBefore = saidBefore.Count > 0 ? saidBefore : null,
                ProfileId = profile?.ProfileId,
                ProfileVersion = profile?.Version,
                ProfileLimits = profile?.Limits,
            };
    }

    private static bool HasLeftSomething(PastVisit visit) =>
        visit.Dangers?.Any(danger => danger.IsLeft) == true || visit.Deferrals?.Any(deferral => deferral.Waits) == true;
}
