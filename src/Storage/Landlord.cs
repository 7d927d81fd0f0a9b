using Records;

namespace Storage;

/// <summary>Whose records the law has kept, and what counts as a check.</summary>
internal static class Landlord
{
    /// <summary>GSIUR 1998, regulation 36: of rented premises, or of a landlord's check. Where the use is not recorded, it counts as rented.</summary>
    public static bool IsLandlords(this ServiceRecord record) =>
        record.JobType == JobType.LandlordCheck || record.Premises?.Use is null or PremisesUse.Rented;

    /// <summary>A check of the kind that regulation 36(3) demands: no repair is one, nor a service of which it is not recorded that the premises are rented.</summary>
    public static bool IsLandlordsCheck(this ServiceRecord record) =>
        record.JobType == JobType.LandlordCheck || record is { JobType: JobType.AnnualService, Premises.Use: PremisesUse.Rented };
}
