using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Findings;
using Jobs.Queue;
using Microsoft.AspNetCore.Http.HttpResults;
using Storage;
using Storage.Keys;
using Visits.Judging;
using Wire;
using Wording;

namespace ComplianceApi.Api.Audits;

/// <summary>What an audit found, as rows and as a report.</summary>
internal static class AuditFindingRoutes
{
    internal static readonly QueryParameter<RowOutcome?> Outcome = Query.OneOfOrAny<RowOutcome>("outcome", "Only rows of this outcome; rejected: faults of records that were not judged.");

    internal static readonly QueryParameter<string?> Topic = Query.Word("topic", "Only rows of this subject area.", Topics.All);

    internal static readonly QueryParameter<string?> Rule = Query.Opaque("rule", "Only rows of this rule.");

    internal static readonly QueryParameter<string?> Engineer = Query.Opaque("engineer", "Only rows of this engineer, by licence number.");

    internal static readonly QueryParameter<RecordOutcome?> Record = Query.OneOfOrAny<RecordOutcome>("recordOutcome",
        "Only rows of records that show this as a whole. incomplete: evidence is missing, also where an advisory is what asks for it.");

    private static readonly QueryParameter<FindingSort> Sort = Query.OneOf("sort", "By what the rows are sorted: line (in the order of the records), outcome (gravest first), rule or engineer.", FindingSort.Line);

    internal static readonly QueryParameter<FindingCursor?> Next = Query.Place<FindingCursor>("next", "The value of next in the answer before.", FindingCursor.TryRead);

    public static void MapAuditFindings(this IEndpointRouteBuilder audits)
    {
        audits.MapGet("/{auditId}/findings", List).WithName("listAuditFindings").Needs(KeyScope.Read).Takes(Outcome, Topic, Rule, Engineer, Record, Sort, Paging.Limit, Next)
            .Produces<Page<FindingRow>>(200).Fails(ProblemKind.NotFound).WithMetadata(new AnswerHeader(200, "Link", "The next page, with rel=next; absent on the last one."));
        audits.MapGet("/{auditId}/findings.ndjson", StreamLines).WithName("streamAuditFindings").Needs(KeyScope.Read).Takes(Outcome, Topic, Rule, Engineer, Record, Sort)
            .StreamsLines<FindingRow>().Fails(ProblemKind.NotFound);
        audits.MapGet("/{auditId}/findings.csv", StreamTable).WithName("tabulateAuditFindings").Needs(KeyScope.Read).Takes(Outcome, Topic, Rule, Engineer, Record, Sort)
            .StreamsTable().Fails(ProblemKind.NotFound);
        audits.MapGet("/{auditId}/records/{line:long:min(1)}", Line).WithName("getAuditedRecord").Needs(KeyScope.Read).Takes(AuditRoutes.Shown).Produces<AuditLine>(200).Fails(ProblemKind.NotFound);
        audits.MapGet("/{auditId}/report", Report).WithName("getAuditReport").Needs(KeyScope.Read).Produces<Stream>(200, "text/html").Fails(ProblemKind.NotFound, ProblemKind.AuditNotCompleted);
    }

    /// <summary>What an audit found, one row for each finding and for each fault of a record that was not judged.</summary>
    /// <remarks>A page of them. While the audit runs, the rows are those judged so far.</remarks>
    /// <param name="auditId">Id of the audit.</param>
    private static async Task<IResult> List(
        string auditId, HttpRequest request, AuditStore audits, FindingStore findings, Tenant tenant, CancellationToken cancel)
    {
        if (await audits.FindAsync(tenant, auditId, cancel) is null)
            return AuditRoutes.NoSuchAudit();

        var query = QueryOf(request, Sort.Of(request));
        var after = Next.Of(request);
        if (after is not null && after.Sort != query.Sort)
        {
            return new ProblemResult(ProblemKind.InvalidParameter, errors:
                [new() { Parameter = "next", Code = "unknownValue", Detail = "This next belongs to another sort; every other parameter must stay as it was." }]);
        }

        var limit = Paging.Limit.Of(request)!.Value;
        var rows = await findings.PageAsync(tenant, auditId, query, after, limit + 1, cancel);
        var page = Paging.PageOf(rows, limit, last => FindingCursor.Of(last, query.Sort).ToText(), await findings.CountAsync(tenant, auditId, query, cancel));
        if (page.Next is { } next)
            request.HttpContext.Response.Headers.Link = $"<{NextPath(request, next)}>; rel=\"next\"";
        return TypedResults.Ok(page);
    }

    /// <summary>Stream what an audit found, a line each.</summary>
    /// <remarks>The same rows as the pages show, all of them.</remarks>
    /// <param name="auditId">Id of the audit.</param>
    private static async Task<IResult> StreamLines(string auditId, HttpRequest request, AuditStore audits, FindingStore findings, Tenant tenant, CancellationToken cancel) =>
        await audits.FindAsync(tenant, auditId, cancel) is null
            ? AuditRoutes.NoSuchAudit()
            : RowStream.Lines(findings.AllAsync(tenant, auditId, QueryOf(request, Sort.Of(request)), cancel), AuditJson.Wire.FindingRow, cancel);

    /// <summary>Download what an audit found, for a spreadsheet.</summary>
    /// <remarks>The same rows as the pages show, all of them, as CSV. A text that a spreadsheet would run as a formula gets an apostrophe in front.</remarks>
    /// <param name="auditId">Id of the audit.</param>
    private static async Task<IResult> StreamTable(string auditId, HttpRequest request, AuditStore audits, FindingStore findings, Tenant tenant, CancellationToken cancel) =>
        await audits.FindAsync(tenant, auditId, cancel) is null
            ? AuditRoutes.NoSuchAudit()
            : RowStream.Table(stream => WriteCsvAsync(stream, findings.AllAsync(tenant, auditId, QueryOf(request, Sort.Of(request)), cancel), cancel), $"audit-{auditId}.csv");

    /// <summary>What an audit says of one of its records.</summary>
    /// <remarks>Its evaluation, of which an audit keeps no passes but their number, or why it was not judged; 404 as well as long as it has not come to its turn.</remarks>
    /// <param name="auditId">Id of the audit.</param>
    /// <param name="line">Number of the record: its line in NDJSON and CSV, its place in a JSON array, from 1.</param>
    private static async Task<Results<FileContentHttpResult, ProblemResult>> Line(
        string auditId, long line, HttpRequest request, AuditStore audits, Tenant tenant, CancellationToken cancel)
    {
        var include = AuditRoutes.Shown.Of(request);
        return await audits.LineAsync(tenant, auditId, line, cancel) is { Answer: var answer }
            ? TypedResults.Bytes(WireJson.ToBytes(answer.Shown(include), AuditLineView.TypeFor(include)), "application/json; charset=utf-8")
            : ProblemResult.NotFound("The audit has no answer for such a line.");
    }

    /// <summary>What a completed audit shows, as one page for a reader.</summary>
    /// <remarks>Made from the same summary that the audit serves as JSON, and names every record that shows a danger.</remarks>
    /// <param name="auditId">Id of the audit.</param>
    private static async Task<IResult> Report(string auditId, HttpResponse response, AuditStore audits, IAuditReport report, ComplianceEngine engine, Tenant tenant, CancellationToken cancel)
    {
        switch (await audits.FindAsync(tenant, auditId, cancel))
        {
            case null:
                return AuditRoutes.NoSuchAudit();
            case { Summary: { } summary } audit:
                response.Headers.ContentSecurityPolicy = report.Policy;
                return Results.Text(await report.OfAsync($"Audit of {Say.Of(summary.Records.Read, "record")}, accepted {Say.Moment(audit.CreatedAt)}", summary, await audits.UnsafeAsync(tenant, auditId, cancel), engine.Catalogue.Limits), "text/html; charset=utf-8");
            default:
                return new ProblemResult(ProblemKind.AuditNotCompleted);
        }
    }

    /// <summary>Which rows a request asks for.</summary>
    internal static FindingQuery QueryOf(HttpRequest request, FindingSort sort) =>
        new(Outcome.Of(request) is { } outcome ? WireNames.Of(outcome) : null, Topic.Of(request), Rule.Of(request), Engineer.Of(request), Record.Of(request) is { } whole ? WireNames.Of(whole) : null, sort);

    private static string NextPath(HttpRequest request, string next)
    {
        var parameters = request.Query.Where(pair => pair.Key != "next").Select(pair => KeyValuePair.Create<string, string?>(pair.Key, pair.Value.ToString()));
        return request.Path + QueryString.Create([.. parameters, KeyValuePair.Create<string, string?>("next", next)]);
    }

    private static async Task WriteCsvAsync(Stream stream, IAsyncEnumerable<FindingRow> rows, CancellationToken cancel)
    {
        await using var csv = new FindingCsv(stream);
        await foreach (var row in rows.WithCancellation(cancel))
            await csv.WriteAsync(row, cancel);
        await csv.FlushAsync(cancel);
    }
}

/// <summary>What a row says.</summary>
internal enum RowOutcome
{
    /// <summary>The record shows a danger, or cannot exclude one.</summary>
    Unsafe,

    /// <summary>The rule failed to run.</summary>
    Error,

    /// <summary>Evidence is missing.</summary>
    Missing,

    /// <summary>Something to mind.</summary>
    Advisory,

    /// <summary>A fault of a record that was not judged.</summary>
    Rejected,
}

/// <summary>What the record of a row shows as a whole. One that passes has no row.</summary>
internal enum RecordOutcome
{
    /// <summary>A danger, or one that cannot be excluded.</summary>
    Unsafe,

    /// <summary>Evidence is missing.</summary>
    Incomplete,

    /// <summary>Something to mind.</summary>
    Advisory,

    /// <summary>It was not judged.</summary>
    Rejected,
}
