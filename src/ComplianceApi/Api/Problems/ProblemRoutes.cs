using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ComplianceApi.Api.Problems;

/// <summary>The pages that a problem's <c>type</c> leads to.</summary>
public static class ProblemRoutes
{
    /// <summary>Maps them.</summary>
    public static void MapProblems(this IEndpointRouteBuilder app) => app.MapGet("/problems/{name}", Get)
        .WithName("getProblem").WithTags("Problems").OpenToAll().Produces<Stream>(200, "text/plain").Fails(ProblemKind.NotFound);

    /// <summary>What a kind of problem means.</summary>
    /// <remarks>A short text for readers: what happened and what to do. The path is the problem's <c>type</c>.</remarks>
    /// <param name="name">Last part of the problem's type.</param>
    private static Results<ContentHttpResult, ProblemResult> Get(string name) => ProblemKind.ByName.TryGetValue(name, out var kind)
        ? TypedResults.Text($"{kind.Title} (status {kind.Status})\n\n{kind.Explanation}\n")
        : ProblemResult.NotFound("There is no such kind of problem.");
}
