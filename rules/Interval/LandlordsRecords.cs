using Findings;
using Records;

namespace Rules.Interval;

/// <summary>Whose records the law has kept and for how long, and what counts as a landlord's check.</summary>
internal static class LandlordsRecords
{
    private const string Check = "check";

    /// <summary>HSE's guidance to landlords (hse.gov.uk/gas/landlords, on records) puts regulation 36(3)(c) as at least two years.</summary>
    public const int FewestYearsKept = 2;

    /// <summary>GSIUR 1998, regulation 36(3)(c), as amended by SI 2018/139: the record of a check is kept until two further checks have been made.</summary>
    public const int ChecksThatEndKeeping = 2;

    /// <summary>GSIUR 1998, regulation 36: of rented premises, or of a landlord's check. Where the use is not recorded, it counts as rented.</summary>
    public static bool IsLandlords(ServiceRecord record) =>
        record.JobType == JobType.LandlordCheck || record.Premises?.Use is null or PremisesUse.Rented;

    /// <summary>
    /// A check of the kind that regulation 36(3) demands: no repair is one, nor a service of which it is not recorded that the premises are
    /// rented, nor any visit to an appliance that the tenant owns, nor one to a home that nobody lets, nor one that was broken off.
    /// </summary>
    public static bool IsCheck(ServiceRecord record, Evaluation? said) => IsMeantAsCheck(record) && WasMade(record, said);

    /// <summary>Of premises that may be let, and a job in which what regulation 26(9) asks for is examined.</summary>
    private static bool IsMeantAsCheck(ServiceRecord record) => record.Appliance.OwnedByTenant != true && IsMaybeLet(record)
        && (record.JobType == JobType.LandlordCheck || record is { JobType: JobType.AnnualService, Premises.Use: PremisesUse.Rented });

    /// <summary>Let, or nobody says: a job that is called a landlord's check makes nobody a landlord of a home that its owner lives in.</summary>
    private static bool IsMaybeLet(ServiceRecord record) => record.Premises?.Use is null or PremisesUse.Rented;

    // What was said before visits closed as something knows no other answer. A check that its record calls broken off is one only where all of it
    // was examined before, and then nothing stands in the way of closing it.
    private static bool WasMade(ServiceRecord record, Evaluation? said) => said?.Closing.ClosesAs is null or Check
        && (record.Work?.Result is null or WorkResult.CarriedOut || said?.Closing is { ClosesAs: Check, Allowed: true });
}
