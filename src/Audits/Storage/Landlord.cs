using ServiceRecords;

namespace Audits;

/// <summary>Whose records the law has kept.</summary>
internal static class Landlord
{
    /// <summary>GSIUR 1998, regulation 36: of rented premises, or of a landlord's check. Where the use is not recorded, it counts as rented.</summary>
    public static bool IsLandlords(this ServiceRecord record) =>
        record.JobType == JobType.LandlordCheck || record.Premises?.Use is null or PremisesUse.Rented;
}
