using System.Reflection;
using Findings;
using Microsoft.AspNetCore.Http.Metadata;

namespace ComplianceApi.Api.Evaluations;

/// <summary>Answers with an evaluation.</summary>
public abstract class EvaluationResult : IResult
{
    private const string MediaType = "application/json";

    private protected EvaluationResult(Evaluation shown) => Shown = shown;

    /// <summary>What is shown.</summary>
    protected Evaluation Shown { get; }

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var response = httpContext.Response;
        response.ContentType = $"{MediaType}; charset=utf-8";
        SetStatus(response);
        WireJson.Write(response.BodyWriter, Shown, EvaluationJson.Default.Evaluation);
        await response.BodyWriter.FlushAsync(httpContext.RequestAborted);
    }

    /// <summary>Sets status and headers.</summary>
    private protected abstract void SetStatus(HttpResponse response);

    private protected static void AddTo(EndpointBuilder builder, int status) =>
        builder.Metadata.Add(new ProducesResponseTypeMetadata(status, typeof(Evaluation), [MediaType]));
}

/// <summary>200 with an evaluation.</summary>
public sealed class EvaluationShown(Evaluation shown) : EvaluationResult(shown), IEndpointMetadataProvider
{
    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => AddTo(builder, StatusCodes.Status200OK);

    private protected override void SetStatus(HttpResponse response) => response.StatusCode = StatusCodes.Status200OK;
}

/// <summary>201 with a stored evaluation and its place.</summary>
public sealed class EvaluationCreated(Evaluation shown) : EvaluationResult(shown), IEndpointMetadataProvider
{
    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => AddTo(builder, StatusCodes.Status201Created);

    private protected override void SetStatus(HttpResponse response)
    {
        response.StatusCode = StatusCodes.Status201Created;
        response.Headers.Location = EvaluationPaths.Of(Shown.EvaluationId!);
    }
}
