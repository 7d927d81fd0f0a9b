using Findings;
using Records;
using Wire;

namespace Visits.Facts;

/// <summary>The trade's words for an earlier visit.</summary>
public static class PastVisitWords
{
    /// <summary>A visit of this kind?</summary>
    public static bool Was(this PastVisit visit, JobType jobType)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return visit.JobType == WireNames.Of(jobType);
    }

    /// <summary>What was measured then under this name; null where nothing was.</summary>
    public static PastValue? Value(this PastVisit visit, string name)
    {
        ArgumentNullException.ThrowIfNull(visit);
        foreach (var value in visit.Values)
        {
            if (value.Name == name)
                return value;
        }

        return null;
    }
}
