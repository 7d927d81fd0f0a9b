using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Calculations;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Storage;

namespace ComplianceApi.Api.Sampling;

/// <summary>How many appliances to look at again, which, and what that shows of the others.</summary>
public static class SamplingRoutes
{
    private const string Method =
        "Exact and one-sided. Size: the least sample for which, were as many faulty as must not be, the chance to see no more faults than allowed is at most 1 - confidence; "
        + "faults in a sample without replacement follow the hypergeometric distribution, of an unlimited population the binomial. "
        + "Bound: the greatest number of faulty ones for which the faults found, or fewer, still have a chance above 1 - confidence.";

    private const string Generator = "Ascending order of HMAC-SHA-256 (RFC 2104, FIPS 198-1, FIPS 180-4) as hex, keyed with the seed, over each item, both in UTF-8; the first sampleSize of them.";

    private static readonly string[] Cautions =
    [
        "The numbers hold when those visited were drawn by lot and all of them were visited: one that could not be visited is no pass.",
        "A sample speaks of the whole. It says nothing of any one appliance that was not visited, and no number of visits shows that a boiler is safe.",
    ];

    /// <summary>Maps the route.</summary>
    public static void MapSampling(this IEndpointRouteBuilder v1) => v1.MapPost("/sampling", Answer).WithName("sizeSample").WithTags("Sampling").NeedsAnyKey()
        .Accepts<Dictionary<string, object>>("application/json").WithMetadata(SamplingQuestion.Shape.Schema, SamplingQuestion.Beyond)
        .Fails(ProblemKind.UnreadableBody, ProblemKind.BodyTooLarge, ProblemKind.UnsupportedMediaType, ProblemKind.InvalidBody).Produces<SamplingAnswer>(200).FailsForDearWork();

    /// <summary>Size a sample for a second look, draw it, and see what the visits show of the whole.</summary>
    /// <remarks>
    /// For a stated confidence and what is tolerable, the fewest to visit. With items and a seed, which ones: anybody who has both draws
    /// the same, and seedPromise lets you make the seed binding before the list is fixed. With visited and faulty, the exact upper bound
    /// for the whole. Nothing is stored.
    /// </remarks>
    private static async Task<IResult> Answer(HttpRequest request, DearPlaces places, Tenant tenant, CancellationToken cancel)
    {
        var body = await JsonBody.ReadAsync(request, cancel);
        if (body.Problem is { } refused)
            return refused;

        var values = SamplingQuestion.Shape.Read(body.Bytes);
        if (SamplingQuestion.Of(values) is not { } question)
            return values.Problem!;
        return await places.InPlaceAsync(tenant, () => Task.FromResult<IResult>(TypedResults.Ok(AnswerTo(question))), cancel);
    }

    private static SamplingAnswer AnswerTo(SamplingQuestion question)
    {
        var size = question.Size is { } population
            ? Inspection.SampleSize(population, question.Tolerable!.Value, question.ConfidencePercent, question.AllowedFaults)
            : Inspection.SampleSizeOfUnlimited(question.TolerablePercent!.Value, question.ConfidencePercent, question.AllowedFaults);
        var excluded = question.Size is { } of ? Text($"fewer than {question.Tolerable} of the {of} are") : Text($"less than {question.TolerablePercent} % are");
        return new SamplingAnswer
        {
            Population = question.Size,
            TolerableCount = question.Tolerable,
            TolerableSharePercent = question.TolerablePercent,
            ConfidencePercent = question.ConfidencePercent,
            AllowedFaults = question.AllowedFaults,
            SampleSize = size,
            Meaning = Text($"If {(question.AllowedFaults == 0 ? "none" : Text($"no more than {question.AllowedFaults}"))} of {size} drawn by lot {(question.AllowedFaults == 0 ? "is" : "are")} faulty, {excluded} faulty, with at least {question.ConfidencePercent} % confidence."),
            Draw = question.Drawable is { } items ? DrawOf(items, question.Seed!, size) : null,
            AfterVisits = question.Visits is var (visited, faulty) ? BoundOf(question, visited, faulty) : null,
            Method = Method,
            Cautions = Cautions,
        };
    }

    private static Draw DrawOf(IReadOnlyList<string> items, string seed, int size) => new()
    {
        SeedPromise = SeededDraw.Promise(seed),
        ItemsHash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(items.Order(StringComparer.Ordinal).Select(item => item + "\n"))))),
        Generator = Generator,
        Items = [.. SeededDraw.Order(seed, items).Take(size)],
    };

    private static VisitedSample BoundOf(SamplingQuestion question, int visited, int faulty)
    {
        var population = question.Size!.Value;
        var bound = Inspection.UpperBound(population, visited, faulty, question.ConfidencePercent);
        return new VisitedSample
        {
            Visited = visited,
            Faulty = faulty,
            AtMostFaulty = bound,
            AtMostSharePercent = decimal.Round(100m * bound / population, 4),
            IsBelowTolerable = bound < question.Tolerable,
            Meaning = Text($"After {visited} visits with {faulty} faulty, at most {bound} of the {population} are faulty, with at least {question.ConfidencePercent} % confidence."),
        };
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
