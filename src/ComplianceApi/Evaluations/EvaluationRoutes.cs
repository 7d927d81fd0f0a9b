using Audits;
using Findings;
using Microsoft.AspNetCore.Http.HttpResults;
using Rules;
using ServiceRecords;

namespace ComplianceApi;

/// <summary>Check one record; read an evaluation back.</summary>
public static class EvaluationRoutes
{
    private static readonly QueryParameter<Include?> Shown = Query.OneOfOrAny<Include>("include",
        "How much is shown. default: findings in full, passes as short rows, what does not apply only counted; all: every answer in full; problems: passes only counted as well.");

    private static readonly QueryParameter<bool> Store = Query.Flag("store", "Whether the record and its evaluation are stored.", absent: true);

    private static readonly QueryParameter<DateOnly?> AsOf = Query.Day("asOf",
        "Judges by the law of this day in place of the record's own, and shows in nextChange what the next known change would make of it.");

    private static readonly QueryParameter<bool> NextChange = Query.Flag("nextChange",
        "Whether the answer shows what the next known change of law would make of it.", absent: false);

    /// <summary>Maps the routes.</summary>
    public static void MapEvaluations(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("/evaluations").WithTags("Evaluations").NeverCached().Fails(ProblemKind.StoreUnavailable);
        routes.MapPost("", Create).WithName("createEvaluation").Takes(Shown, Store, AsOf, NextChange).Accepts<ServiceRecord>("application/json")
            .WithMetadata(new BodyExample(() => typeof(RuleIds).Assembly.GetManifestResourceStream("example-record.json")!))
            .Fails(ProblemKind.UnreadableBody, ProblemKind.BodyTooLarge, ProblemKind.UnsupportedMediaType, ProblemKind.InvalidBody);
        routes.MapGet("/{evaluationId}", Get).WithName("getEvaluation").Takes(Shown).Fails(ProblemKind.NotFound);
        routes.MapGet("/{evaluationId}/record", GetRecord).WithName("getEvaluatedRecord")
            .Produces<ServiceRecord>(200, "application/json").Fails(ProblemKind.NotFound);
    }

    /// <summary>Check one service record.</summary>
    /// <remarks>
    /// Every rule in force answers, once for each subject. A verdict, whatever it says, is a success: 201 with the path of the stored
    /// evaluation in Location, or 200 without an evaluationId for store=false. A half-filled record is welcome while the engineer is
    /// still on site: missing lists what to do before leaving. The answer says what the record shows; it never says that a boiler is safe.
    /// </remarks>
    private static async Task<Results<Created<Evaluation>, Ok<Evaluation>, ProblemResult>> Create(
        HttpRequest request, Judge judge, Tenant tenant, CancellationToken cancel)
    {
        var body = await JsonBody.ReadAsync(request, cancel);
        if (body.Problem is { } refused)
            return refused;

        var shown = Shown.Of(request) ?? Include.Default;
        var keep = Store.Of(request);
        var law = new Law(AsOf.Of(request), NextChange.Of(request));
        var judged = await judge.JudgeAsync(tenant, body.Bytes, shown, keep, law, cancel);
        if (judged.Problem is { } problem)
            return problem;

        var answer = judged.Evaluation!.Show(shown);
        return keep ? TypedResults.Created($"/v1/evaluations/{answer.EvaluationId}", answer) : TypedResults.Ok(answer);
    }

    /// <summary>Read an evaluation back.</summary>
    /// <remarks>Without include, as much as was asked for then: the same bytes as the answer to the POST. Where a corrected record has superseded it, a Link header names the newer evaluation.</remarks>
    /// <param name="evaluationId">Id of the evaluation.</param>
    private static async Task<Results<Ok<Evaluation>, ProblemResult>> Get(
        string evaluationId, HttpRequest request, EvaluationStore evaluations, Tenant tenant, CancellationToken cancel)
    {
        if (await evaluations.FindAsync(tenant, evaluationId, cancel) is not { } stored)
            return NoSuchEvaluation();

        if (stored.SupersededBy is { } newer)
            request.HttpContext.Response.Headers.Link = $"</v1/evaluations/{newer}>; rel=\"successor-version\"";
        return TypedResults.Ok(stored.Evaluation.Show(Shown.Of(request) ?? stored.Shown));
    }

    /// <summary>Read the record of an evaluation as it was posted, byte for byte.</summary>
    /// <param name="evaluationId">Id of the evaluation.</param>
    private static async Task<Results<FileContentHttpResult, ProblemResult>> GetRecord(
        string evaluationId, EvaluationStore evaluations, Tenant tenant, CancellationToken cancel) =>
        await evaluations.FindRecordAsync(tenant, evaluationId, cancel) is { } record
            ? TypedResults.Bytes(record, "application/json")
            : NoSuchEvaluation();

    private static ProblemResult NoSuchEvaluation() => ProblemResult.NotFound("There is no such evaluation.");
}
