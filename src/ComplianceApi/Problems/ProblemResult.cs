using System.Diagnostics;
using Microsoft.AspNetCore.Http.Metadata;
using Records.Faults;

namespace ComplianceApi.Problems;

/// <summary>Answers with a problem: the one place where a problem is written.</summary>
public sealed class ProblemResult(ProblemKind kind, string? detail = null, IReadOnlyList<ProblemError>? errors = null) : IResult
{
    /// <summary>Media type of a problem.</summary>
    public const string MediaType = "application/problem+json";

    private const string RetryAfterSeconds = "5";
    private const string RetryAfterRefill = "1";

    /// <summary>What is wrong.</summary>
    public ProblemKind Kind { get; } = kind;

    /// <summary>Of a body that could not be read (400) or has faults (422).</summary>
    public static ProblemResult Of(FaultKind kind, IReadOnlyList<Fault> faults) => new(
        kind == FaultKind.Unreadable ? ProblemKind.UnreadableBody : ProblemKind.InvalidBody,
        faults.Count == 1 ? faults[0].Detail : $"{faults.Count} faults are listed in errors.",
        [.. faults.Select(ProblemError.Of)]);

    /// <summary>Nothing is stored under an id.</summary>
    public static ProblemResult NotFound(string what) => new(ProblemKind.NotFound, what);

    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext) => WriteAsync(httpContext, Kind.Status);

    /// <summary>Writes the problem under <paramref name="status"/>, which may be finer than the kind's own.</summary>
    public Task WriteAsync(HttpContext httpContext, int status)
    {
        var response = httpContext.Response;
        response.StatusCode = status;
        if (status == StatusCodes.Status503ServiceUnavailable)
            response.Headers.RetryAfter = RetryAfterSeconds;
        else if (status == StatusCodes.Status429TooManyRequests)
            response.Headers.RetryAfter = RetryAfterRefill;

        if (ProblemHandling.EndpointOf(httpContext)?.Metadata.GetMetadata<IProblemPage>() is { } page)
            return page.WriteAsync(httpContext, Kind, status, detail);

        var problem = new Problem
        {
            Type = Kind.Type,
            Title = Kind.Title,
            Status = status,
            Detail = detail ?? Kind.Explanation,
            Instance = httpContext.Request.Path.ToUriComponent(),
            TraceId = Activity.Current?.TraceId.ToHexString() ?? httpContext.TraceIdentifier,
            Errors = errors,
        };
        return response.WriteAsJsonAsync(problem, ProblemJson.Wire.Problem, MediaType, httpContext.RequestAborted);
    }
}

/// <summary>A problem that a route may answer with, for the documents.</summary>
public sealed class Failure(ProblemKind kind) : IProducesResponseTypeMetadata
{
    /// <inheritdoc />
    public Type Type => typeof(Problem);

    /// <inheritdoc />
    public int StatusCode => kind.Status;

    /// <inheritdoc />
    public string Description => kind.Title;

    /// <inheritdoc />
    public IEnumerable<string> ContentTypes => [ProblemResult.MediaType];
}

/// <summary>Says which problems a route may answer with.</summary>
public static class Failures
{
    /// <summary>Documents <paramref name="kinds"/>.</summary>
    public static TBuilder Fails<TBuilder>(this TBuilder route, params ReadOnlySpan<ProblemKind> kinds) where TBuilder : IEndpointConventionBuilder
    {
        foreach (var kind in kinds)
            route.WithMetadata(new Failure(kind));
        return route;
    }
}
