using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Findings;
using Microsoft.AspNetCore.Http.HttpResults;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.Evaluations;

/// <summary>Which evaluations there are, and which of them changed.</summary>
internal static class EvaluationListRoutes
{
    private static readonly QueryParameter<string?> RecordId = Query.Opaque("recordId", "Only of the record with this id of your own.");

    private static readonly QueryParameter<DateOnly?> From = Query.Day("from", "Only of visits that ended on this day (UTC) or later.");

    private static readonly QueryParameter<DateOnly?> To = Query.Day("to", "Only of visits that ended on this day (UTC) or before.");

    private static readonly QueryParameter<OverallOutcome?> Outcome = Query.OneOfOrAny<OverallOutcome>("outcome", "Only those of this outcome.");

    private static readonly QueryParameter<ListedClosing?> Closing = Query.OneOfOrAny<ListedClosing>("closing", "Only those with which the job may be closed (allowed), or only those with which it may not (held).");

    private static readonly QueryParameter<string?> Engineer = Query.Opaque("engineer", "Only of this engineer, by licence number.");

    private static readonly QueryParameter<string?> Premises = Query.Opaque("premises", "Only of the premises with this reference.");

    private static readonly QueryParameter<string?> SerialNumber = Query.Opaque("serialNumber", "Only of the appliance with this serial number, as the records give it.");

    private static readonly QueryParameter<string?> Maker = Query.Opaque("maker", "Only of appliances of this maker.");

    private static readonly QueryParameter<bool?> Superseded = Query.FlagOrAny("superseded",
        "Only evaluations in whose place another counts (true), or only those that count (false). Leave it out along with changedSince: an evaluation that is superseded later would leave the list unseen.");

    private static readonly QueryParameter<long?> ChangedSince = Query.Number("changedSince",
        "Only what changed after the change with this number, in the order in which it changed: 0 at first, then changedUpTo of the answer before.");

    private static readonly QueryParameter<long?> Next = Query.Number("next", "The value of next in the answer before; not along with changedSince, which goes on from changedUpTo.");

    /// <summary>Maps the route.</summary>
    public static void MapEvaluationList(this IEndpointRouteBuilder evaluations) => evaluations.MapGet("", List).WithName("listEvaluations").Needs(KeyScope.Read)
        .Takes(RecordId, From, To, Outcome, Closing, Engineer, Premises, SerialNumber, Maker, Superseded, ChangedSince, Paging.Limit, Next).Revalidated();

    /// <summary>List evaluations, or follow what changes.</summary>
    /// <remarks>
    /// What was said of each stored record, posted on its own or in an audit; what changed last comes first. To follow what happens, ask with
    /// changedSince, each time with the changedUpTo of the answer before, at once again while isMore is true: nothing is missed, and what comes
    /// again has been superseded in between. What was removed because it no longer had to be kept leaves the list. Where storeGeneration is not what it was,
    /// the store was restored from a copy, which may have taken back what you saw: begin again with 0.
    /// </remarks>
    private static async Task<Results<Ok<EvaluationPage>, ProblemResult>> List(
        HttpRequest request, EvaluationList list, Database database, Tenant tenant, CancellationToken cancel)
    {
        if (await list.IsIncompleteAsync(tenant, cancel))
            return new ProblemResult(ProblemKind.StoreUnavailable, "What an older version of the service stored is being read for this list, which takes seconds to minutes. Nothing was left out: ask again a little later.");

        var query = QueryOf(request);
        if (query.From > query.To)
            return Wrong("to", "boundsCrossed", "The last day lies before the first.");

        var limit = Paging.Limit.Of(request)!.Value;
        return ChangedSince.Of(request) is { } since
            ? await ChangedAsync(since)
            : TypedResults.Ok(await LatestAsync());

        async Task<EvaluationPage> LatestAsync()
        {
            var items = await list.LatestAsync(tenant, query, Next.Of(request), limit + 1, cancel);
            var isMore = items.Count > limit;
            return new EvaluationPage
            {
                Items = [.. items.Take(limit)],
                IsMore = isMore,
                Next = isMore ? items[limit - 1].Change : null,
                Total = await list.CountAsync(tenant, query, cancel),
                StoreGeneration = database.Identity.Generation,
            };
        }

        async Task<Results<Ok<EvaluationPage>, ProblemResult>> ChangedAsync(long since)
        {
            if (Next.Of(request) is not null)
                return Wrong("next", "unknownValue", "Expected none along with changedSince, which goes on from changedUpTo of the answer before.");

            return await list.ChangedAsync(tenant, query, since, limit, cancel) is var (items, upTo)
                ? TypedResults.Ok(new EvaluationPage { Items = items, IsMore = items.Count == limit, ChangedUpTo = upTo, StoreGeneration = database.Identity.Generation })
                : Wrong("changedSince", "unknownValue", "No change has this number yet. Was the store restored from a copy? Begin again with 0.");
        }
    }

    private static EvaluationQuery QueryOf(HttpRequest request) => new()
    {
        RecordId = RecordId.Of(request),
        From = From.Of(request),
        To = To.Of(request),
        Outcome = Outcome.Of(request),
        Closing = Closing.Of(request),
        Engineer = Engineer.Of(request),
        Premises = Premises.Of(request),
        SerialNumber = SerialNumber.Of(request),
        Maker = Maker.Of(request),
        Superseded = Superseded.Of(request),
    };

    private static ProblemResult Wrong(string parameter, string code, string detail) =>
        new(ProblemKind.InvalidParameter, errors: [new() { Parameter = parameter, Code = code, Detail = detail }]);
}

/// <summary>A part of the list of evaluations.</summary>
public sealed class EvaluationPage
{
    /// <summary>The evaluations of this part.</summary>
    public required IReadOnlyList<ListedEvaluation> Items { get; init; }

    /// <summary>Are there, or may there be, more at once? Of a list with changedSince ask on from changedUpTo, of any other from next.</summary>
    public required bool IsMore { get; init; }

    /// <summary>To be given as the parameter next, with all others unchanged, for the following part; absent on the last one, and with changedSince.</summary>
    public long? Next { get; init; }

    /// <summary>How many the whole list has; absent with changedSince.</summary>
    public int? Total { get; init; }

    /// <summary>To be given as changedSince the next time: up to this change the answers show everything; absent without changedSince.</summary>
    public long? ChangedUpTo { get; init; }

    /// <summary>1, and one more for each time that the store was restored from a copy.</summary>
    public required long StoreGeneration { get; init; }
}
