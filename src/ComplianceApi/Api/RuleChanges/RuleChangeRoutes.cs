using System.Globalization;
using System.Text.Json;
using ComplianceApi.Api.Audits;
using ComplianceApi.Api.Evaluations;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Jobs.Previews;
using Microsoft.AspNetCore.Http.HttpResults;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.RuleChanges;

/// <summary>What a change of rules would do to what has been said.</summary>
public static class RuleChangeRoutes
{
    private const string Path = "/v1/rule-changes/preview";

    private static readonly QueryParameter<string?> Before = Query.After("next", "The value of next in the answer before.");

    private static readonly QueryParameter<string?> Change = Query.Word("change", "Only rows of this change.", ["new", "changed", "gone", "notJudged"]);

    private static readonly QueryParameter<string?> Outcome = Query.Word("outcome", "Only rows of this outcome by the candidate, or, of findings that are gone, by the rules in force.",
        ["unsafe", "error", "missing", "advisory"]);

    private static readonly QueryParameter<string?> Rule = Query.Opaque("rule", "Only rows of this rule.");

    private static readonly QueryParameter<string?> Engineer = Query.Opaque("engineer", "Only rows of this engineer, by licence number.");

    private static readonly QueryParameter<string?> Month = Query.Month("month", "Only rows of visits in this month, such as 2026-09.");

    private static readonly QueryParameter<RowPlace?> Next = Query.Place<RowPlace>("next", "The value of next in the answer before.", RowPlace.TryRead);

    /// <summary>Maps the routes.</summary>
    public static void MapRuleChanges(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("/rule-changes/preview").WithTags("Rule changes").NeverCached().Fails(ProblemKind.StoreUnavailable);
        routes.MapPost("", Create).WithName("previewRuleChange").Needs(KeyScope.Audit).Accepts<Dictionary<string, object>>("application/json")
            .WithMetadata(RuleChangeQuestion.Shape.Schema, RuleChangeQuestion.Beyond).Produces<PreviewStatus>(202)
            .Fails(ProblemKind.UnreadableBody, ProblemKind.BodyTooLarge, ProblemKind.UnsupportedMediaType, ProblemKind.InvalidBody, ProblemKind.TooManyAudits).FailsForDearWork();
        routes.MapGet("", List).WithName("listRuleChangePreviews").Needs(KeyScope.Read).Takes(Paging.Limit, Before);
        routes.MapGet("/{previewId}", Get).WithName("getRuleChangePreview").Needs(KeyScope.Read).Fails(ProblemKind.NotFound);
        routes.MapDelete("/{previewId}", Cancel).WithName("cancelRuleChangePreview").Needs(KeyScope.Audit).Fails(ProblemKind.NotFound);
        routes.MapGet("/{previewId}/changes", ListChanges).WithName("listRuleChanges").Needs(KeyScope.Read).Takes(Change, Outcome, Rule, Engineer, Month, Paging.Limit, Next)
            .Produces<Page<ChangeRow>>(200).Fails(ProblemKind.NotFound);
        routes.MapGet("/{previewId}/changes.ndjson", StreamLines).WithName("streamRuleChanges").Needs(KeyScope.Read).Takes(Change, Outcome, Rule, Engineer, Month)
            .StreamsLines<ChangeRow>().Fails(ProblemKind.NotFound);
        routes.MapGet("/{previewId}/changes.csv", StreamTable).WithName("tabulateRuleChanges").Needs(KeyScope.Read).Takes(Change, Outcome, Rule, Engineer, Month)
            .StreamsTable().Fails(ProblemKind.NotFound);
    }

    /// <summary>See what other limits, or the law of another day, would make of the stored visits.</summary>
    /// <remarks>
    /// Every stored visit, those of audits included, is judged anew, once by the rules in force and once by the candidate, with what stood
    /// beside the record when it was judged and as seen from the same day. Of several evaluations of one visit the last one counts. Nothing
    /// that was said is changed. It runs as an audit does: 202 with its path in Location; ask there how far it is. Findings count as the
    /// same when outcome, subject, the numbers of the limit and what was looked at are: new words, names and sources change nothing.
    /// An Idempotency-Key takes no part: sent again, the request makes a second preview, which costs time and changes nothing.
    /// </remarks>
    private static async Task<IResult> Create(
        HttpRequest request, PreviewIntake intake, CandidateEngines engines, AuditPlaces jobs, DearPlaces places, Tenant tenant, CancellationToken cancel)
    {
        if (!await jobs.TryTakeAsync(tenant, request.HttpContext.Response, cancel))
            return new ProblemResult(ProblemKind.TooManyAudits);

        var body = await JsonBody.ReadAsync(request, cancel);
        if (body.Problem is { } refused)
            return refused;

        return await places.InPlaceAsync(tenant, AcceptAsync, cancel);

        async Task<IResult> AcceptAsync()
        {
            var values = RuleChangeQuestion.Shape.Read(body.Bytes);
            if (RuleChangeQuestion.Of(values, engines) is not { } candidate)
                return values.Problem!;

            var accepted = await intake.AcceptAsync(tenant, candidate, cancel);
            request.HttpContext.Response.Headers.RetryAfter = "1";
            return TypedResults.Accepted($"{Path}/{accepted.PreviewId}", accepted);
        }
    }

    /// <summary>List the previews, newest first, without their summaries.</summary>
    /// <remarks>One preview by its id has the summary as well.</remarks>
    private static async Task<Ok<Page<PreviewStatus>>> List(HttpRequest request, PreviewStore previews, Tenant tenant, CancellationToken cancel)
    {
        var limit = Paging.Limit.Of(request)!.Value;
        var (items, total) = await previews.ListAsync(tenant, Before.Of(request), limit + 1, cancel);
        return TypedResults.Ok(Paging.PageOf(items, limit, last => last.PreviewId, total));
    }

    /// <summary>How far a preview is, and once it is completed, what would change.</summary>
    /// <remarks>Ask again while it is queued or running; expectedEnd tells when it may be done.</remarks>
    /// <param name="previewId">Id of the preview.</param>
    private static async Task<Results<Ok<PreviewStatus>, ProblemResult>> Get(string previewId, PreviewStore previews, Tenant tenant, CancellationToken cancel) =>
        await previews.FindAsync(tenant, previewId, cancel) is { } preview ? TypedResults.Ok(preview) : NoSuchPreview();

    /// <summary>Cancel a preview.</summary>
    /// <remarks>What was found by then stays. A preview that has ended stays as it is.</remarks>
    /// <param name="previewId">Id of the preview.</param>
    private static async Task<Results<Ok<PreviewStatus>, ProblemResult>> Cancel(string previewId, PreviewStore previews, Tenant tenant, CancellationToken cancel)
    {
        await previews.CancelAsync(tenant, previewId, cancel);
        return await Get(previewId, previews, tenant, cancel);
    }

    /// <summary>Which findings a candidate would bring, change or take away, one row each, with the path of the evaluation.</summary>
    /// <remarks>
    /// A page of them. While the preview runs, the rows are those found so far. Findings that stay as they are, are only counted, in the
    /// preview's summary.
    /// </remarks>
    /// <param name="previewId">Id of the preview.</param>
    private static async Task<IResult> ListChanges(string previewId, HttpRequest request, PreviewStore previews, Tenant tenant, CancellationToken cancel)
    {
        if (await previews.FindAsync(tenant, previewId, cancel) is null)
            return NoSuchPreview();

        var query = QueryOf(request);
        var limit = Paging.Limit.Of(request)!.Value;
        var rows = await previews.PageAsync(tenant, previewId, query, Next.Of(request) is { } place ? (place.Line, place.Ordinal) : default, limit + 1, cancel);
        return TypedResults.Ok(Paging.PageOf([.. rows.Select(row => row.Addressed())], limit, last => new RowPlace(last.Line, last.Ordinal).ToString(), await previews.CountAsync(tenant, previewId, query, cancel)));
    }

    /// <summary>Stream what a candidate would change, a line each.</summary>
    /// <remarks>The same rows as the pages show, all of them.</remarks>
    /// <param name="previewId">Id of the preview.</param>
    private static async Task<IResult> StreamLines(string previewId, HttpRequest request, PreviewStore previews, Tenant tenant, CancellationToken cancel) =>
        await previews.FindAsync(tenant, previewId, cancel) is null ? NoSuchPreview() : RowStream.Lines(All(previewId, request, previews, tenant, cancel), PreviewJson.Wire.ChangeRow, cancel);

    /// <summary>Download what a candidate would change, for a spreadsheet.</summary>
    /// <remarks>The same rows as the pages show, all of them, as CSV. A text that a spreadsheet would run as a formula gets an apostrophe in front.</remarks>
    /// <param name="previewId">Id of the preview.</param>
    private static async Task<IResult> StreamTable(string previewId, HttpRequest request, PreviewStore previews, Tenant tenant, CancellationToken cancel) =>
        await previews.FindAsync(tenant, previewId, cancel) is null
            ? NoSuchPreview()
            : RowStream.Table(stream => RowStream.WriteCsvAsync(stream, CsvHead, All(previewId, request, previews, tenant, cancel), CsvOf, cancel), $"changes-{previewId}.csv");

    private static IAsyncEnumerable<ChangeRow> All(string previewId, HttpRequest request, PreviewStore previews, Tenant tenant, CancellationToken cancel) =>
        previews.AllAsync(tenant, previewId, QueryOf(request), cancel).Select(row => row.Addressed());

    private static ChangeQuery QueryOf(HttpRequest request) => new(Change.Of(request), Outcome.Of(request), Rule.Of(request), Engineer.Of(request), Month.Of(request));

    private static readonly string[] CsvHead =
    [
        "line", "change", "evaluation", "recordId", "finishedOn", "maker", "model", "serialNumber", "engineer", "ruleId", "topic", "subject",
        "outcome", "outcomeBefore", "message", "messageBefore",
    ];

    private static string[] CsvOf(ChangeRow row) =>
    [
        row.Line.ToString(CultureInfo.InvariantCulture), JsonSerializer.Serialize(row.Change, PreviewJson.Wire.ChangeKind).Trim('"'), row.Evaluation, row.RecordId,
        row.FinishedOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "", row.Maker, row.Model, row.SerialNumber, row.Engineer, row.RuleId, row.Topic, row.Subject,
        row.Outcome, row.OutcomeBefore, row.Message, row.MessageBefore,
    ];

    private static ProblemResult NoSuchPreview() => ProblemResult.NotFound("There is no such preview.");

    /// <summary>A place among the rows: that of the last row that was given out.</summary>
    private sealed record RowPlace(long Line, int Ordinal)
    {
        public static bool TryRead(string text, out RowPlace? place)
        {
            var parts = text.Split('.');
            place = parts.Length == 2 && long.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var line)
                && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var ordinal) ? new RowPlace(line, ordinal) : null;
            return place is not null;
        }

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Line}.{Ordinal}");
    }
}
