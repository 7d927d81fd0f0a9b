using System.Reflection;
using Findings;
using Microsoft.AspNetCore.Http.Metadata;

namespace ComplianceApi.Api.Evaluations;

/// <summary>Answers with an evaluation, of which so much is shown as is asked for.</summary>
public abstract class EvaluationResult : IResult
{
    private const string MediaType = "application/json";

    private readonly Include _include;

    private protected EvaluationResult(Evaluation evaluation, Include include) => (Evaluation, _include) = (evaluation, include);

    /// <summary>The whole evaluation.</summary>
    private protected Evaluation Evaluation { get; }

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var response = httpContext.Response;
        response.ContentType = $"{MediaType}; charset=utf-8";
        SetStatus(response);
        WireJson.Write(response.BodyWriter, Evaluation.InShort(_include), _include == Include.All ? EvaluationJson.Default.Evaluation : ShortJson.Evaluation);
        await response.BodyWriter.FlushAsync(httpContext.RequestAborted);
    }

    /// <summary>Sets status and headers.</summary>
    private protected abstract void SetStatus(HttpResponse response);

    private protected static void AddTo(EndpointBuilder builder, int status) =>
        builder.Metadata.Add(new ProducesResponseTypeMetadata(status, typeof(Evaluation), [MediaType]));
}

/// <summary>200 with an evaluation.</summary>
public sealed class EvaluationShown(Evaluation evaluation, Include include) : EvaluationResult(evaluation, include), IEndpointMetadataProvider
{
    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => AddTo(builder, StatusCodes.Status200OK);

    private protected override void SetStatus(HttpResponse response) => response.StatusCode = StatusCodes.Status200OK;
}

/// <summary>201 with a stored evaluation and its place.</summary>
public sealed class EvaluationCreated(Evaluation evaluation, Include include) : EvaluationResult(evaluation, include), IEndpointMetadataProvider
{
    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => AddTo(builder, StatusCodes.Status201Created);

    private protected override void SetStatus(HttpResponse response)
    {
        response.StatusCode = StatusCodes.Status201Created;
        response.Headers.Location = EvaluationPaths.Of(Evaluation.EvaluationId!);
    }
}
