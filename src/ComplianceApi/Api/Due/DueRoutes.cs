using System.Text;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Findings;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.Due;

/// <summary>What falls due in a portfolio.</summary>
internal static class DueRoutes
{
    private const int DefaultDays = 90;

    private static readonly QueryParameter<DateOnly?> From = Query.Day("from", "The first day; by default today (UTC).");

    private static readonly QueryParameter<DateOnly?> To = Query.Day("to", $"The last day; by default {DefaultDays} days after the first.");

    private static readonly QueryParameter<DueCursor?> Next = Query.Place<DueCursor>("next", "The value of next in the answer before.", DueCursor.TryRead);

    /// <summary>Maps the routes.</summary>
    public static void MapDue(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("").WithTags("Due dates").NeverCached().Fails(ProblemKind.StoreUnavailable);
        routes.MapGet("/due", List).WithName("listDueDates").Needs(KeyScope.Read).Takes(From, To, Paging.Limit, Next).Produces<Page<DueDate>>(200).Revalidated();
        routes.MapGet("/due.ics", Calendar).WithName("getDueCalendar").Needs(KeyScope.Read).Takes(From, To).Produces<Stream>(200, DueCalendar.MediaType).Revalidated();
    }

    /// <summary>What falls due from one day to another.</summary>
    /// <remarks>
    /// Services, landlords' checks with the first day of their window, calibrations, engineers' categories, carbon monoxide alarms and
    /// inhibitor, each by the latest stored record on it and with the rule by which its day is reckoned; no law sets an interval for
    /// inhibitor. What no record dates is not listed, so an empty list does not say that nothing is due.
    /// </remarks>
    private static async Task<IResult> List(HttpRequest request, DueStore store, Tenant tenant, TimeProvider clock, CancellationToken cancel)
    {
        if (DaysOf(request, clock) is not var (from, to))
            return Crossed;

        var limit = Paging.Limit.Of(request)!.Value;
        var items = await store.PageAsync(tenant, from, to, Next.Of(request), limit + 1, cancel);
        return TypedResults.Ok(Paging.PageOf(items, limit, last => DueCursor.Of(last).ToText(), await store.CountAsync(tenant, from, to, cancel)));
    }

    /// <summary>Subscribe to what falls due.</summary>
    /// <remarks>The same dates as the list, all of them, as iCalendar (RFC 5545).</remarks>
    private static async Task<IResult> Calendar(HttpRequest request, DueStore store, Tenant tenant, TimeProvider clock, CancellationToken cancel) =>
        DaysOf(request, clock) is var (from, to)
            ? Results.Text(DueCalendar.Of(await store.AllAsync(tenant, from, to, cancel).ToListAsync(cancel), clock.GetUtcNow()), DueCalendar.MediaType, Encoding.UTF8)
            : Crossed;

    private static (DateOnly From, DateOnly To)? DaysOf(HttpRequest request, TimeProvider clock)
    {
        var from = From.Of(request) ?? DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        var to = To.Of(request) ?? (from > DateOnly.MaxValue.AddDays(-DefaultDays) ? DateOnly.MaxValue : from.AddDays(DefaultDays));
        return to < from ? null : (from, to);
    }

    private static ProblemResult Crossed => new(ProblemKind.InvalidParameter, errors:
        [new() { Parameter = "to", Code = "boundsCrossed", Detail = "The last day lies before the first." }]);
}
