using Records;

namespace SecondOpinion.Opinions;

/// <summary>What kind of visit it is, where more than one topic asks.</summary>
internal static class Who
{
    public static bool IsLandlordCheck(this Case c) => c.Record.JobType == JobType.LandlordCheck;

    /// <summary>Service items do not concern a bare landlord check.</summary>
    public static bool IsServiced(this Case c) => !c.IsLandlordCheck();

    /// <summary>What only the yearly service does.</summary>
    public static bool IsAnnualService(this Case c) => c.Record.JobType == JobType.AnnualService;

    /// <summary>Rented, or checked for a landlord.</summary>
    public static bool? IsLet(this Case c) => c.IsLandlordCheck() ? true : c.Record.Premises?.Use switch
    {
        null => null,
        var use => use == PremisesUse.Rented,
    };

    /// <summary>Let, and the appliance is not the tenant's own.</summary>
    public static bool? IsLandlords(this Case c) => Reply.And(c.IsLet(), c.Record.Appliance.OwnedByTenant != true);

    public static bool? IsWorkplace(this Case c) => c.Record.Premises?.Use switch
    {
        null => null,
        var use => use == PremisesUse.Workplace,
    };

    /// <summary>A commissioning has to say whether the boiler is new, and so has whatever else fills in that section.</summary>
    public static bool? IsNewBoiler(this Case c) =>
        c.Record.Commissioning is { } section ? section.NewBoiler : c.Record.JobType == JobType.Commissioning ? null : false;

    public static bool IsIn(this Case c, params ReadOnlySpan<string> nations) => nations.Contains(c.Record.Jurisdiction);

    /// <summary>What lets products out is immediately dangerous once they are found in the room.</summary>
    public static IEnumerable<Opinion> GravestInRoom(this Case c, IEnumerable<Opinion> answer) => c.ProductsAreInRoom() ? Reply.Immediately(answer) : answer;

    /// <summary>The day of the visit as written.</summary>
    public static DateOnly Day(this Case c) => c.Record.FinishedAt.Date;
}
