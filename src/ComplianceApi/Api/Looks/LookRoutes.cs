using ComplianceApi.Api.Evaluations;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Jobs.Looks;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.Looks;

/// <summary>Where in the stored records of a period an auditor may look.</summary>
public static class LookRoutes
{
    private const int LongestDays = 366;

    private static readonly QueryParameter<DateOnly?> From = Query.Day("from", "First day (UTC) on which the visits ended; by default 30 days before the last.");

    private static readonly QueryParameter<DateOnly?> To = Query.Day("to", "Last day; by default today. At most 366 days in all.");

    private static readonly QueryParameter<int?> Rate = Query.Whole("falseDiscoveryPercent", "How many in a hundred of what rests on chance may be mere chance.", 1, 50, absent: 5);

    /// <summary>Maps the route.</summary>
    public static void MapLooks(this IEndpointRouteBuilder v1) => v1.MapGroup("/worth-a-look").WithTags("Worth a look").NeverCached().Fails(ProblemKind.StoreUnavailable)
        .MapGet("", Get).WithName("listWhatIsWorthALook").Needs(KeyScope.Read).Takes(From, To, Rate).Produces<LookReport>(200).FailsForDearWork();

    /// <summary>See what in the stored records of a period is worth a look.</summary>
    /// <remarks>
    /// The same flue readings on different appliances, one analyser at two places at once, visits that are shorter than their work, and
    /// last digits that are less even than the display (from 50 readings of one engineer with one instrument on). What rests on chance is
    /// judged over all tests together (Benjamini and Hochberg). No accusation: each of these has innocent causes. It stands apart from an
    /// audit's summary since it speaks of people, needs a whole period of records, and is not for everyone who may read a summary. Up to
    /// 50,000 stored visits, those of audits included.
    /// </remarks>
    private static async Task<IResult> Get(HttpRequest request, LookStore looks, DearPlaces places, Tenant tenant, TimeProvider clock, CancellationToken cancel)
    {
        var to = To.Of(request) ?? DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        var from = From.Of(request) ?? DateOnly.FromDayNumber(Math.Max(0, to.DayNumber - 30));
        if (from > to || to.DayNumber - from.DayNumber >= LongestDays)
            return Refused("from", $"Expected a day no later than the last and at most {LongestDays} days in all.");

        return await places.InPlaceAsync(tenant, LookAsync, cancel);

        async Task<IResult> LookAsync() => await looks.FindAsync(tenant, from, to, Rate.Of(request)!.Value / 100m, cancel) is { } report
            ? TypedResults.Ok(report.Addressed())
            : Refused("from", $"The period has more than {LookStore.MostRecords} records; take a shorter one.");
    }

    private static ProblemResult Refused(string parameter, string detail) =>
        new(ProblemKind.InvalidParameter, errors: [new() { Parameter = parameter, Code = "unknownValue", Detail = detail }]);
}
