using Records;

namespace Rules.Interval;

/// <summary>Whose records the law has kept and for how long, and what counts as a landlord's check.</summary>
internal static class LandlordsRecords
{
    /// <summary>HSE's guidance to landlords (hse.gov.uk/gas/landlords, on records) puts regulation 36(3)(c) as at least two years.</summary>
    public const int FewestYearsKept = 2;

    /// <summary>GSIUR 1998, regulation 36(3)(c), as amended by SI 2018/139: the record of a check is kept until two further checks have been made.</summary>
    public const int ChecksThatEndKeeping = 2;

    /// <summary>GSIUR 1998, regulation 36: of rented premises, or of a landlord's check. Where the use is not recorded, it counts as rented.</summary>
    public static bool IsLandlords(ServiceRecord record) =>
        record.JobType == JobType.LandlordCheck || record.Premises?.Use is null or PremisesUse.Rented;

    /// <summary>
    /// A check of the kind that regulation 36(3) demands: no repair is one, nor a service of which it is not recorded that the premises are
    /// rented, nor any visit to an appliance that the tenant owns.
    /// </summary>
    public static bool IsCheck(ServiceRecord record) => record.Appliance.OwnedByTenant != true
        && (record.JobType == JobType.LandlordCheck || record is { JobType: JobType.AnnualService, Premises.Use: PremisesUse.Rented });
}
