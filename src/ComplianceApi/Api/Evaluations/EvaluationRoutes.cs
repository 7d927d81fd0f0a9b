using Checking;
using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Operations;
using ComplianceApi.Problems;
using Findings;
using Microsoft.AspNetCore.Http.HttpResults;
using Records;
using Records.Faults;
using Rules;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.Evaluations;

/// <summary>Check one record; read an evaluation back.</summary>
public static class EvaluationRoutes
{
    private static readonly QueryParameter<Include> Shown = Query.OneOf("include", HowMuch, Include.Problems);

    private static readonly QueryParameter<Include?> ShownAgain = Query.OneOfOrAny<Include>("include", $"{HowMuch} Without it as much as was asked for when the record was posted.");

    private static readonly QueryParameter<bool> Store = Query.Flag("store", "Whether the record and its evaluation are stored.", absent: true);

    private static readonly QueryParameter<DateOnly?> AsOf = Query.Day("asOf",
        "Judges by the law of this day in place of the record's own, and shows in nextChange what the next known change would make of it.");

    private static readonly QueryParameter<bool> NextChange = Query.Flag("nextChange",
        "Whether the answer shows what the next known change of law would make of it.", absent: false);

    private static readonly TakesIdempotencyKey Key = new(
        "Your own key for this request, such as a UUID. Sent again with the same key, query and body, the request gives the evaluation that the first one made, in the same bytes. "
        + "The key stays taken as long as its evaluation is stored. Where nothing is stored (store=false, or a record that was refused), the key takes no part.");

    private const string HowMuch = "How much is shown: problems, passes or all.";

    /// <summary>Maps the routes.</summary>
    public static void MapEvaluations(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("/evaluations").WithTags("Evaluations").NeverCached().Fails(ProblemKind.StoreUnavailable);
        routes.MapPost("", Create).WithName("createEvaluation").Needs(KeyScope.Evaluate).Takes(Shown, Store, AsOf, NextChange).Accepts<ServiceRecord>("application/json")
            .WithMetadata(new BodyExample(() => typeof(RuleIds).Assembly.GetManifestResourceStream("example-record.json")!))
            .WithMetadata(Key, new BeyondSchema(FaultCodes.RequiredMember))
            .Fails(ProblemKind.UnreadableBody, ProblemKind.KeyInFlight, ProblemKind.BodyTooLarge, ProblemKind.UnsupportedMediaType, ProblemKind.InvalidBody, ProblemKind.KeyReused, ProblemKind.TooSlow);
        routes.MapEvaluationList();
        routes.MapGet("/{evaluationId}", Get).WithName("getEvaluation").Needs(KeyScope.Read).Takes(ShownAgain).Revalidated().Fails(ProblemKind.NotFound)
            .WithMetadata(new AnswerHeader(200, "Link", "The evaluation that has superseded this one, with rel=successor-version; absent while none has."));
        routes.MapGet("/{evaluationId}/record", GetRecord).WithName("getEvaluatedRecord").Needs(KeyScope.Read)
            .Produces<ServiceRecord>(200, "application/json").Revalidated().Fails(ProblemKind.NotFound);
    }

    /// <summary>Check one service record.</summary>
    /// <remarks>
    /// Every rule in force answers, once for each subject. A verdict, whatever it says, is a success: 201 with the path of the stored
    /// evaluation in Location, or 200 without an evaluationId for store=false. A half-filled record is welcome while the engineer is
    /// still on site: missing lists what to do before leaving. The answer says what the record shows; it never says that a boiler is safe.
    /// It is short: what passed is counted, and what each question, duty and figure rests on comes with include=all.
    /// </remarks>
    private static async Task<Results<EvaluationCreated, EvaluationShown, ProblemResult>> Create(
        HttpRequest request, RecordIntake intake, Repeats repeats, Tenant tenant, Caller caller, CancellationToken cancel)
    {
        if (!IdempotencyKey.TryRead(request, out var key))
            return IdempotencyKey.Refusal;

        var body = await JsonBody.ReadAsync(request, cancel);
        if (body.Problem is { } refused)
            return refused;

        var shown = Shown.Of(request);
        var keep = Store.Of(request);
        await using var repeat = keep && key is not null ? await repeats.BeginAsync(tenant, key, request.QueryString.ToUriComponent(), body.Bytes, cancel) : null;
        if (repeat?.Problem is { } notNow)
            return notNow;
        if (repeat?.Stored is { } earlier)
            return new EvaluationCreated(earlier.Evaluation, earlier.Shown);

        var law = new Law(AsOf.Of(request), NextChange.Of(request));
        TakenRecord taken;
        using var judging = Telemetry.StartJudging();
        try
        {
            taken = await intake.TakeAsync(tenant, body.Bytes, shown, keep, law, cancel, repeat?.Keyed, caller.Key?.Id);
        }
        catch (KeyLostException)
        {
            return new ProblemResult(ProblemKind.KeyInFlight);
        }

        if (taken.Evaluation is not { } evaluation)
        {
            Telemetry.Refused();
            return ProblemResult.Of(taken.Kind, taken.Faults);
        }

        Telemetry.Judged(evaluation.Outcome);
        repeat?.IsStored = true;
        return keep ? new EvaluationCreated(evaluation, shown) : new EvaluationShown(evaluation, shown);
    }

    /// <summary>Read an evaluation back.</summary>
    /// <remarks>
    /// Without include, as much as was asked for then: the same bytes as the answer to the POST. What a stored audit says of a record has an
    /// id too and is read here as well; of answers that only pass, audits keep the number. Where a corrected record has superseded it, a Link
    /// header names the newer evaluation.
    /// </remarks>
    /// <param name="evaluationId">Id of the evaluation.</param>
    private static async Task<Results<EvaluationShown, ProblemResult>> Get(
        string evaluationId, HttpRequest request, EvaluationStore evaluations, Tenant tenant, CancellationToken cancel)
    {
        if (await evaluations.FindAsync(tenant, evaluationId, cancel) is not { } stored)
            return NoSuchEvaluation();

        if (stored.SupersededBy is { } newer)
            request.HttpContext.Response.Headers.Link = $"<{EvaluationPaths.Of(newer)}>; rel=\"successor-version\"";
        return new EvaluationShown(stored.Evaluation, ShownAgain.Of(request) ?? stored.Shown);
    }

    /// <summary>Read the record of an evaluation as it was posted.</summary>
    /// <remarks>Byte for byte: blanks, order and all.</remarks>
    /// <param name="evaluationId">Id of the evaluation.</param>
    private static async Task<Results<FileContentHttpResult, ProblemResult>> GetRecord(
        string evaluationId, EvaluationStore evaluations, Tenant tenant, CancellationToken cancel) =>
        await evaluations.FindRecordAsync(tenant, evaluationId, cancel) is { } record
            ? TypedResults.Bytes(record, "application/json")
            : NoSuchEvaluation();

    private static ProblemResult NoSuchEvaluation() => ProblemResult.NotFound("There is no such evaluation.");
}
