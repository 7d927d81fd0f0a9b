using System.Text;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Findings;
using Microsoft.Net.Http.Headers;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.Due;

/// <summary>What falls due in a portfolio.</summary>
internal static class DueRoutes
{
    private const int DefaultDays = 90;

    private static readonly QueryParameter<DateOnly?> From = Query.Day("from", "The first day; by default today (UTC).");

    private static readonly QueryParameter<DateOnly?> To = Query.Day("to", $"The last day; by default {DefaultDays} days after the first.");

    private static readonly QueryParameter<DueFormat?> Format = Query.OneOfOrAny<DueFormat>("format",
        "json: one page; calendar: all of it as iCalendar (RFC 5545), to be subscribed to. By default what Accept asks for, else json.");

    private static readonly QueryParameter<DueCursor?> Next = Query.Place<DueCursor>("next", "The value of next in the answer before; json only.", DueCursor.TryRead);

    /// <summary>Maps the route.</summary>
    public static void MapDue(this IEndpointRouteBuilder v1) =>
        v1.MapGroup("/due").WithTags("Due dates").NeverCached().Fails(ProblemKind.StoreUnavailable)
            .MapGet("", List).WithName("listDueDates").Needs(KeyScope.Read).Takes(From, To, Format, Paging.Limit, Next)
            .Produces<Page<DueDate>>(200, "application/json", DueCalendar.MediaType).Revalidated();

    /// <summary>What falls due from one day to another.</summary>
    /// <remarks>
    /// Services, landlords' checks with the first day of their window, calibrations, engineers' categories, carbon monoxide alarms and
    /// inhibitor, each by the latest stored record on it and with the rule by which its day is reckoned; no law sets an interval for
    /// inhibitor. What no record dates is not listed, so an empty list does not say that nothing is due.
    /// </remarks>
    private static async Task<IResult> List(HttpRequest request, DueStore store, Tenant tenant, TimeProvider clock, CancellationToken cancel)
    {
        var from = From.Of(request) ?? DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        var to = To.Of(request) ?? (from > DateOnly.MaxValue.AddDays(-DefaultDays) ? DateOnly.MaxValue : from.AddDays(DefaultDays));
        if (to < from)
        {
            return new ProblemResult(ProblemKind.InvalidParameter, errors:
                [new() { Parameter = "to", Code = "boundsCrossed", Detail = "The last day lies before the first." }]);
        }

        var format = Format.Of(request) ?? (AsksForCalendar(request) ? DueFormat.Calendar : DueFormat.Json);
        if (format == DueFormat.Calendar)
            return Results.Text(DueCalendar.Of(await store.AllAsync(tenant, from, to, cancel).ToListAsync(cancel), clock.GetUtcNow()), DueCalendar.MediaType, Encoding.UTF8);

        var limit = Paging.Limit.Of(request)!.Value;
        var items = await store.PageAsync(tenant, from, to, Next.Of(request), limit + 1, cancel);
        return TypedResults.Ok(Paging.PageOf(items, limit, last => DueCursor.Of(last).ToText(), await store.CountAsync(tenant, from, to, cancel)));
    }

    private static bool AsksForCalendar(HttpRequest request) =>
        MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var accepted)
        && accepted.Any(type => type.MediaType.Equals(DueCalendar.MediaType, StringComparison.OrdinalIgnoreCase));
}

/// <summary>How what falls due is written.</summary>
internal enum DueFormat
{
    /// <summary>One page.</summary>
    Json,

    /// <summary>iCalendar.</summary>
    Calendar,
}
