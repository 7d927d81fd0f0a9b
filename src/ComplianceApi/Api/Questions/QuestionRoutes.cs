using ComplianceApi.Api.Requests;
using ComplianceApi.Api.Schemas;
using ComplianceApi.Guard;
using Findings;
using Microsoft.AspNetCore.Http.HttpResults;
using Records;
using Records.Members;
using Visits.Judging;
using Wire;

namespace ComplianceApi.Api.Questions;

/// <summary>What to record, before the visit.</summary>
public static class QuestionRoutes
{
    private static readonly QueryParameter<JobType> JobTypeOf = Query.OneOf("jobType", "What the visit is for.", JobType.AnnualService);

    private static readonly QueryParameter<string> JurisdictionOf = Query.Jurisdiction("Whose law applies (ISO 3166-2).", ShippedRules.Header.UsualJurisdiction);

    private static readonly QueryParameter<Fuel> FuelOf = Query.OneOf("fuel", "The gas that the appliance burns.", Fuel.NaturalGas);

    private static readonly QueryParameter<FlueType> FlueTypeOf = Query.OneOf("flueType", "The appliance's type of flue.", FlueType.RoomSealedFanned);

    /// <summary>Maps the route.</summary>
    public static void MapQuestions(this IEndpointRouteBuilder v1) => v1.MapGet("/questions", Get).WithName("listQuestions").WithTags("Questions").NeedsAnyKey()
        .Takes(JobTypeOf, JurisdictionOf, FuelOf, FlueTypeOf);

    /// <summary>List what to record on a visit.</summary>
    /// <remarks>
    /// The entries that missing would have for a visit of this kind, today, with a reading at either rate, a tightness test, the usual
    /// joints and devices and an analyser, and nothing recorded of them yet; in the order in which they can be answered on site. What is
    /// found on the visit may raise further questions.
    /// </remarks>
    private static Ok<QuestionList> Get(HttpRequest request, ComplianceEngine engine, TimeProvider clock) => TypedResults.Ok(
        QuestionList.Of(engine, JobTypeOf.Of(request), JurisdictionOf.Of(request), FuelOf.Of(request), FlueTypeOf.Of(request), clock.GetUtcNow()));
}

/// <summary>What to record on a visit of one kind; never cut into parts.</summary>
public sealed class QuestionList
{
    /// <summary>What the visit is for.</summary>
    public required JobType JobType { get; init; }

    /// <summary>Whose law.</summary>
    [ValuesOf(ValueSets.Jurisdiction)]
    public required string Jurisdiction { get; init; }

    /// <summary>The gas.</summary>
    public required Fuel Fuel { get; init; }

    /// <summary>The type of flue.</summary>
    public required FlueType FlueType { get; init; }

    /// <summary>The day whose law it is.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>The rules that ask.</summary>
    public required RuleSetInfo RuleSet { get; init; }

    /// <summary>The questions in visiting order.</summary>
    public required IReadOnlyList<MissingItem> Items { get; init; }

    /// <summary>How many there are.</summary>
    public required int Total { get; init; }

    internal static QuestionList Of(ComplianceEngine engine, JobType jobType, string jurisdiction, Fuel fuel, FlueType flueType, DateTimeOffset now)
    {
        var visit = TypicalVisit.Of(jobType, jurisdiction, fuel, flueType, now);
        var evaluation = engine.Evaluate(visit);
        return new QuestionList
        {
            JobType = jobType,
            Jurisdiction = jurisdiction,
            Fuel = fuel,
            FlueType = flueType,
            AsOf = evaluation.AsOf,
            RuleSet = evaluation.RuleSet,
            // In the order in which they can be answered; of those what must be there, then what should.
            Items = [.. evaluation.Missing.Concat(evaluation.NotLookedAt).OrderBy(item => RecordMembers.At(item.Pointer).While)],
            Total = evaluation.Missing.Count + evaluation.NotLookedAt.Count,
        };
    }
}
