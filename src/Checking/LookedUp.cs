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
    /// <param name="earlier">Earlier visits with its serial number, those of its own maker first, the latest first.</param>
    public static Lookup Beside(ServiceRecord record, ApplianceProfile? profile, IReadOnlyList<PastVisit> earlier)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(earlier);
        return profile is null && earlier.Count == 0
            ? Lookup.None
            : new Lookup
            {
                PreviousEvaluationId = earlier.FirstOrDefault(visit => VisitKey.OfMaker(visit.Maker) == VisitKey.OfMaker(record.Appliance.Maker))?.EvaluationId,
                History = earlier.Count > 0 ? earlier : null,
                ProfileId = profile?.ProfileId,
                ProfileVersion = profile?.Version,
                ProfileLimits = profile?.Limits,
            };
    }
}
