using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Findings;
using Jobs;
using Jobs.Queue;
using Microsoft.AspNetCore.Http.HttpResults;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.Audits;

/// <summary>Check many records; follow and end audits.</summary>
public static class AuditRoutes
{
    internal static readonly QueryParameter<Include> Shown = Query.OneOf("include",
        "How much of each evaluation is shown: problems, passes or all.", Include.Problems);

    private static readonly QueryParameter<string?> Before = Query.After("next", "The value of next in the answer before.");

    /// <summary>Maps the routes.</summary>
    public static void MapAudits(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("/audits").WithTags("Audits").NeverCached().Fails(ProblemKind.StoreUnavailable);
        routes.MapPost("", Create).WithName("createAudit").Needs(KeyScope.Audit).WithMetadata(new AuditOperation(IsStored: true)).Produces<AuditStatus>(202)
            .Fails(ProblemKind.UnreadableBody, ProblemKind.AuditTooLong, ProblemKind.UnsupportedMediaType, ProblemKind.InvalidBody, ProblemKind.KeyInFlight, ProblemKind.KeyReused, ProblemKind.TooManyAudits)
            .DisableRequestTimeout();
        routes.MapGet("", List).WithName("listAudits").Needs(KeyScope.Read).Takes(Paging.Limit, Before);
        routes.MapGet("/{auditId}", Get).WithName("getAudit").Needs(KeyScope.Read).Revalidated().Fails(ProblemKind.NotFound)
            .WithMetadata(new AnswerHeader(200, "Retry-After", "Seconds to wait before asking again; absent once the audit has ended."));
        routes.MapDelete("/{auditId}", Cancel).WithName("cancelAudit").Needs(KeyScope.Audit).Fails(ProblemKind.NotFound);
        routes.MapAuditFindings();
        v1.MapGroup("/audit-lines").WithTags("Audits").NeverCached().Fails(ProblemKind.StoreUnavailable)
            .MapPost("", Answer).WithName("judgeAtOnce").Needs(KeyScope.Audit).Takes(Shown).WithMetadata(new AuditOperation(IsStored: false), new LinesOf(typeof(AuditLine)))
            .Produces<Stream>(200, RowStream.LinesMediaType)
            .Fails(ProblemKind.UnreadableBody, ProblemKind.AuditTooLong, ProblemKind.UnsupportedMediaType, ProblemKind.InvalidBody, ProblemKind.TooManyAudits)
            .FailsForDearWork().DisableRequestTimeout();
    }

    /// <summary>Check many service records, such as those of a month.</summary>
    /// <remarks>
    /// The body is NDJSON (one record a line), a JSON array, or CSV with member paths as its header (combustion.readings.0.coPpm; an
    /// empty cell means "not recorded", [] in the column of a list states "none"). Each record is for itself: one that cannot be judged is
    /// reported under its line with every fault, and the rest goes on. The records are stored and judged later: 202 with the path of the
    /// audit in Location. With Idempotency-Key a repeated request gives the audit of the first. Deadlines are seen from the day (UTC) on
    /// which the audit began, and profiles are those that were saved by then.
    /// A record whose supersedes names a stored evaluation replaces the record that was judged there: where both are in the audit, the
    /// older one is judged and shown with supersededBy, and counted only as superseded.
    /// </remarks>
    private static async Task<IResult> Create(HttpRequest request, AuditReception reception, AuditPlaces places, Tenant tenant, Caller caller, CancellationToken cancel) =>
        await places.TryTakeAsync(tenant, request.HttpContext.Response, cancel)
            ? await reception.StoreAsync(request, tenant, caller.Key?.Id, cancel)
            : new ProblemResult(ProblemKind.TooManyAudits);

    /// <summary>Check a few thousand records at once.</summary>
    /// <remarks>
    /// The body is that of an audit. Up to 5,000 records and 16 MiB are answered in the order in which they came, as lines of JSON, of which
    /// the last is the summary; nothing of them is stored. Where that answer would have more than 64 MiB, it is refused as a whole (413): send
    /// fewer, show less by include, or make an audit of them.
    /// </remarks>
    private static async Task<IResult> Answer(HttpRequest request, AuditReception reception, AuditPlaces places, Tenant tenant, CancellationToken cancel) =>
        await places.TryTakeAsync(tenant, request.HttpContext.Response, cancel)
            ? await reception.AnswerAsync(request, tenant, Shown.Of(request), cancel)
            : new ProblemResult(ProblemKind.TooManyAudits);

    /// <summary>List the audits, newest first, without their summaries.</summary>
    /// <remarks>One audit by its id has the summary as well.</remarks>
    private static async Task<Ok<Page<AuditStatus>>> List(HttpRequest request, AuditStore audits, Tenant tenant, CancellationToken cancel)
    {
        var limit = Paging.Limit.Of(request)!.Value;
        var (items, total) = await audits.ListAsync(tenant, Before.Of(request), limit + 1, cancel);
        return TypedResults.Ok(Paging.PageOf(items, limit, last => last.AuditId, total));
    }

    /// <summary>How far an audit is, and once it is completed, what it shows.</summary>
    /// <remarks>Ask again while it is queued or running; expectedEnd tells when it may be done.</remarks>
    /// <param name="auditId">Id of the audit.</param>
    private static async Task<Results<Ok<AuditStatus>, ProblemResult>> Get(string auditId, HttpResponse response, AuditStore audits, Tenant tenant, CancellationToken cancel)
    {
        if (await audits.FindAsync(tenant, auditId, cancel) is not { } audit)
            return NoSuchAudit();

        if (audit.State is AuditState.Queued or AuditState.Running)
            response.Headers.RetryAfter = "1";
        return TypedResults.Ok(audit);
    }

    /// <summary>Cancel an audit.</summary>
    /// <remarks>What was judged by then stays. An audit that has ended stays as it is.</remarks>
    /// <param name="auditId">Id of the audit.</param>
    private static async Task<Results<Ok<AuditStatus>, ProblemResult>> Cancel(string auditId, HttpResponse response, AuditStore audits, Tenant tenant, CancellationToken cancel)
    {
        await audits.CancelAsync(tenant, auditId, cancel);
        return await Get(auditId, response, audits, tenant, cancel);
    }

    internal static ProblemResult NoSuchAudit() => ProblemResult.NotFound("There is no such audit.");
}
