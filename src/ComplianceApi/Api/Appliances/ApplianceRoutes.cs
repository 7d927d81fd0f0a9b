using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Microsoft.AspNetCore.Http.HttpResults;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.Appliances;

/// <summary>The history of one appliance.</summary>
internal static class ApplianceRoutes
{
    private static readonly QueryParameter<string?> Maker = Query.Opaque("maker", "Only the appliance of this maker: two makers may have given the same serial number.");

    private static readonly QueryParameter<DateTimeOffset?> KnownAt = Query.Moment("knownAt",
        "Only what had been said by this moment, as it then stood. Which law was applied (asOf) and from which day deadlines were seen (lookedAtOn) are times of their own and stay as they are.");

    private static readonly QueryParameter<EvaluationCursor?> Next = Query.Place<EvaluationCursor>("next", "The value of next in the answer before.", EvaluationCursor.TryRead);

    /// <summary>Maps the routes.</summary>
    public static void MapAppliances(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("/appliances").WithTags("Appliances").NeverCached().Fails(ProblemKind.StoreUnavailable, ProblemKind.NotFound);
        routes.MapGet("/{serialNumber}", Get).WithName("getAppliance").Needs(KeyScope.Read).Takes(Maker, KnownAt, Paging.Limit).Revalidated();
        routes.MapGet("/{serialNumber}/evaluations", List).WithName("listApplianceEvaluations").Needs(KeyScope.Read).Takes(Maker, KnownAt, Paging.Limit, Next).Revalidated();
    }

    /// <summary>The history of an appliance.</summary>
    /// <remarks>
    /// Its visits, the latest first, each with the evaluation that counts: not superseded, and of several of one visit (the same record id
    /// on the same day) the one that was asked for last. Records of stored audits are visits as well. What it shows is what records said,
    /// and no statement about the boiler as it stands.
    /// </remarks>
    /// <param name="serialNumber">Serial number of the appliance, as the records give it.</param>
    private static async Task<Results<Ok<ApplianceTimeline>, ProblemResult>> Get(
        string serialNumber, HttpRequest request, ApplianceHistory history, Tenant tenant, CancellationToken cancel) =>
        await history.FindAsync(tenant, serialNumber, Maker.Of(request), KnownAt.Of(request), Paging.Limit.Of(request)!.Value, cancel) is { } timeline
            ? TypedResults.Ok(timeline)
            : NoSuchAppliance();

    /// <summary>Every evaluation of an appliance's records.</summary>
    /// <remarks>Those that a corrected record superseded as well; the latest visit first.</remarks>
    /// <param name="serialNumber">Serial number of the appliance, as the records give it.</param>
    private static async Task<Results<Ok<Page<ApplianceEvaluation>>, ProblemResult>> List(
        string serialNumber, HttpRequest request, TimelineStore timelines, Tenant tenant, TimeProvider clock, CancellationToken cancel)
    {
        var limit = Paging.Limit.Of(request)!.Value;
        var (items, total) = await timelines.EvaluationsAsync(
            tenant, serialNumber, Maker.Of(request), KnownAt.Of(request) ?? clock.GetUtcNow(), Next.Of(request), limit + 1, cancel);
        return total == 0
            ? NoSuchAppliance()
            : TypedResults.Ok(Paging.PageOf(items, limit, last => new EvaluationCursor(last.FinishedAt, last.EvaluationId).ToText(), total));
    }

    private static ProblemResult NoSuchAppliance() => ProblemResult.NotFound("Nothing had been said of such an appliance.");
}
