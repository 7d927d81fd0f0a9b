using System.Data.Common;
using Microsoft.AspNetCore.Diagnostics;
using Storage;

namespace ComplianceApi.Problems;

/// <summary>Gives every failure the one shape of a problem: exceptions, and the bare statuses that the framework answers with.</summary>
public static class ProblemHandling
{
    /// <summary>Adds it in front of everything that may fail.</summary>
    public static void UseProblems(this WebApplication app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandler = OnException,

            // A client's mistake is the client's: the log is for failures of the service.
            SuppressDiagnosticsCallback = context => context.Exception is BadHttpRequestException || IsChunkBeyondNumbers(context.Exception),
        });
        app.UseStatusCodePages(context => OnBareStatus(context.HttpContext));
    }

    /// <summary>What was asked for, also where its handler threw: then it stands with what was thrown.</summary>
    internal static Endpoint? EndpointOf(HttpContext context) => context.GetEndpoint() ?? context.Features.Get<IExceptionHandlerFeature>()?.Endpoint;

    private static Task OnException(HttpContext context) => context.Features.Get<IExceptionHandlerFeature>()?.Error switch
    {
        BadHttpRequestException bad => new ProblemResult(ProblemKind.Of(bad.StatusCode)).WriteAsync(context, bad.StatusCode),
        { } fault when IsChunkBeyondNumbers(fault) => new ProblemResult(ProblemKind.BadRequest).ExecuteAsync(context),
        StoreUpgradedException upgraded => new ProblemResult(ProblemKind.StoreUnavailable, upgraded.Message).ExecuteAsync(context),
        DbException => new ProblemResult(ProblemKind.StoreUnavailable).ExecuteAsync(context),
        _ => new ProblemResult(ProblemKind.InternalError).ExecuteAsync(context),
    };

    /// <summary>For a chunk of 2^31 bytes or more the server throws this, and for any other wrong size what a client's mistake should be.</summary>
    private static bool IsChunkBeyondNumbers(Exception fault) => fault is IOException { InnerException: OverflowException };

    private static Task OnBareStatus(HttpContext context)
    {
        var status = context.Response.StatusCode;

        // Routing itself refuses other media types, on the routes that take one: JSON (RFC 9110, section 15.5.16).
        if (status == StatusCodes.Status415UnsupportedMediaType)
            context.Response.Headers.Accept = "application/json";

        // Whatever has GET has HEAD (RFC 9110, section 9.3.2); routing knows GET alone.
        var allowed = context.Response.Headers.Allow.SelectMany(value => (value ?? "").Split(", ")).ToList();
        if (status == StatusCodes.Status405MethodNotAllowed && allowed.Contains(HttpMethods.Get) && !allowed.Contains(HttpMethods.Head))
            context.Response.Headers.Allow = string.Join(", ", [.. allowed, HttpMethods.Head]);
        return new ProblemResult(ProblemKind.Of(status)).WriteAsync(context, status);
    }
}
