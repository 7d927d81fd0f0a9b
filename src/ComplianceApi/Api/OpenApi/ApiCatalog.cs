using System.Text.Json.Serialization;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ComplianceApi.Api.OpenApi;

/// <summary>Where a program that knows only the host finds the rest (RFC 9727): a linkset (RFC 9264).</summary>
public sealed class ApiCatalog
{
    private const string MediaType = "application/linkset+json";

    /// <summary>The one set of links: those of this API.</summary>
    [JsonPropertyName("linkset")]
    public required IReadOnlyList<ApiLinks> Links { get; init; }

    internal static JsonHttpResult<ApiCatalog> Of(HttpRequest request, bool hasPage)
    {
        var host = $"{request.Scheme}://{request.Host}";
        return TypedResults.Json(
            new ApiCatalog
            {
                Links =
                [
                    new ApiLinks
                    {
                        Anchor = host + "/v1",
                        Descriptions = [Json("/openapi/v1.json"), Json("/openapi/v1-3.0.json")],
                        Documentation = hasPage ? [new ApiLink { Href = host + "/docs/index.html", Type = "text/html" }] : null,
                        Status = [Json("/health/ready")],
                    },
                ],
            },
            options: null,
            contentType: MediaType + "; profile=\"https://www.rfc-editor.org/info/rfc9727\"");

        ApiLink Json(string path) => new() { Href = host + path, Type = "application/json" };
    }

    internal static string DocumentedMediaType => MediaType;
}

/// <summary>What belongs to an API.</summary>
public sealed class ApiLinks
{
    /// <summary>Where the API begins.</summary>
    public required string Anchor { get; init; }

    /// <summary>Its OpenAPI documents: version 3.1 first, then its 3.0 twin.</summary>
    [JsonPropertyName("service-desc")]
    public required IReadOnlyList<ApiLink> Descriptions { get; init; }

    /// <summary>A page for people, where there is one.</summary>
    [JsonPropertyName("service-doc")]
    public IReadOnlyList<ApiLink>? Documentation { get; init; }

    /// <summary>Whether it is ready.</summary>
    [JsonPropertyName("status")]
    public required IReadOnlyList<ApiLink> Status { get; init; }
}

/// <summary>A link.</summary>
public sealed class ApiLink
{
    /// <summary>Where it leads.</summary>
    public required string Href { get; init; }

    /// <summary>Media type of what is there.</summary>
    public required string Type { get; init; }
}

/// <summary>The route of the catalogue.</summary>
public static class ApiCatalogRoute
{
    private const string Path = "/.well-known/api-catalog";

    /// <summary>Maps it.</summary>
    public static void MapApiCatalog(this IEndpointRouteBuilder app) => app.MapGet(Path, Get)
        .WithName("getApiCatalog").WithTags("Discovery").OpenToAll().Revalidated().Produces<ApiCatalog>(200, ApiCatalog.DocumentedMediaType)
        .WithMetadata(new AnswerHeader(200, "Link", "Where the catalogue is, with rel=api-catalog (RFC 9727): HEAD says it as well."));

    /// <summary>Find the documents, the page and the state of this API.</summary>
    /// <remarks>RFC 9727: one well-known path from which a program finds the rest.</remarks>
    private static JsonHttpResult<ApiCatalog> Get(HttpRequest request, IConfiguration configuration, IHostEnvironment environment)
    {
        request.HttpContext.Response.Headers.Link = $"<{Path}>; rel=\"api-catalog\"";
        return ApiCatalog.Of(request, Documents.ShowsPage(configuration, environment));
    }
}
