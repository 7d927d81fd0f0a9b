using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Requests;
using ComplianceApi.Api.Schemas;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Microsoft.AspNetCore.Http.HttpResults;
using Visits.Computations;

namespace ComplianceApi.Api.Calculations;

/// <summary>Every computation behind a record, one at a time and with its working.</summary>
public static class CalculationRoutes
{
    /// <summary>Maps the routes.</summary>
    public static void MapCalculations(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("/calculations").WithTags("Calculations").NeedsAnyKey();
        routes.MapGet("", List).WithName("listCalculations").Takes(Paging.Limit, Paging.Next);
        routes.MapPost("/{name}", Calculate).WithName("calculate").Accepts<Dictionary<string, object>>("application/json")
            .WithMetadata(new BodySchema(CalculationInputs.Name, () => CalculationInputs.Schema), new BeyondSchema("unknownMember", "requiredMember", "outOfRange"))
            .Fails(ProblemKind.NotFound, ProblemKind.UnreadableBody, ProblemKind.BodyTooLarge, ProblemKind.UnsupportedMediaType, ProblemKind.InvalidBody);
    }

    /// <summary>List the computations: what each needs, in which units and ranges, its formula and where that stands.</summary>
    /// <remarks>The figures of an evaluation have the names of the computations that made them.</remarks>
    private static Ok<Page<CalculationView>> List(HttpRequest request) => TypedResults.Ok(ComputationTable.All.Select(CalculationView.Of).PageOf(request));

    /// <summary>Work out one computation.</summary>
    /// <remarks>
    /// The body has the inputs by name, each in the unit that the list of computations gives. Outside the range of the formula there is
    /// no result: 422 names every input at fault. A result explains a reading; it is no verdict.
    /// </remarks>
    /// <param name="name">Name of the computation, such as coCo2Ratio.</param>
    private static async Task<Results<Ok<CalculationResult>, ProblemResult>> Calculate(string name, HttpRequest request, CancellationToken cancel)
    {
        if (ComputationTable.Find(name) is not { } computation)
            return ProblemResult.NotFound("There is no such computation.");

        var body = await JsonBody.ReadAsync(request, cancel);
        if (body.Problem is { } refused)
            return refused;
        if (!CalculationBody.TryRead(body.Bytes, computation, out var given, out var problem))
            return problem;

        var values = computation.Complete(given);
        return TypedResults.Ok(new CalculationResult
        {
            Name = computation.Name,
            Value = computation.NumberOf(values),
            Date = computation.DayOf(values),
            Unit = computation.Unit,
            Formula = computation.Formula,
            Constants = computation.ConstantsOf(values),
            Source = computation.Source,
            Working = computation.WorkingOf(values),
        });
    }
}
