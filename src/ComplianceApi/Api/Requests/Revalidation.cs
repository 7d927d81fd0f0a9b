using System.Buffers.Text;
using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace ComplianceApi.Api.Requests;

/// <summary>
/// Gives answers that a caller may keep a strong <c>ETag</c> over their bytes, and answers <c>If-None-Match</c> with 304 and no body
/// while they have not changed (RFC 9110, sections 8.8.3 and 13.1.2).
/// </summary>
public static class Revalidation
{
    /// <summary>Answers of these routes have an ETag.</summary>
    public static TBuilder Revalidated<TBuilder>(this TBuilder route) where TBuilder : IEndpointConventionBuilder =>
        route.WithMetadata(new RevalidatedMetadata());

    /// <summary>Adds it: to routes that say so, and to the OpenAPI documents, which are no routes.</summary>
    public static void UseRevalidation(this WebApplication app) => app.Use((context, next) =>
        HttpMethods.IsGet(context.Request.Method)
        && (context.GetEndpoint()?.Metadata.GetMetadata<RevalidatedMetadata>() is not null || context.Request.Path.StartsWithSegments("/openapi", StringComparison.Ordinal))
            ? AnswerAsync(context, next)
            : next(context));

    private static async Task AnswerAsync(HttpContext context, RequestDelegate next)
    {
        var response = context.Response;
        var sent = response.Body;
        using var answer = new MemoryStream();
        response.Body = answer;
        try
        {
            await next(context);
        }
        finally
        {
            response.Body = sent;
        }

        if (response.StatusCode == StatusCodes.Status200OK)
        {
            var given = answer.GetBuffer().AsSpan(0, (int)answer.Length);
            response.Headers.ETag = TagOf(given).ToString();
            if (IsKnown(context.Request, given))
            {
                response.StatusCode = StatusCodes.Status304NotModified;
                response.ContentType = null;
                response.ContentLength = null;
                return;
            }
        }

        await sent.WriteAsync(answer.GetBuffer().AsMemory(0, (int)answer.Length), context.RequestAborted);
    }

    /// <summary>Does <c>If-Match</c> name what is there now (RFC 9110, section 13.1.1)?</summary>
    /// <param name="request">A request that has the header.</param>
    /// <param name="current">The bytes that GET answers; null: there is nothing.</param>
    public static bool IsMatch(HttpRequest request, byte[]? current)
    {
        ArgumentNullException.ThrowIfNull(request);
        return current is not null && EntityTagHeaderValue.TryParseList(request.Headers.IfMatch, out var seen)
            && seen.Any(one => one.Equals(EntityTagHeaderValue.Any) || one.Compare(TagOf(current), useStrongComparison: true));
    }

    /// <summary>Does <c>If-None-Match</c> name what is there (RFC 9110, section 13.1.2)?</summary>
    /// <param name="request">The request.</param>
    /// <param name="current">The bytes that GET answers.</param>
    public static bool IsKnown(HttpRequest request, ReadOnlySpan<byte> current)
    {
        ArgumentNullException.ThrowIfNull(request);
        var tag = TagOf(current);
        return EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out var known)
            && known.Any(one => one.Equals(EntityTagHeaderValue.Any) || one.Compare(tag, useStrongComparison: false));
    }

    /// <summary>The strong tag of an answer.</summary>
    /// <param name="answer">Its bytes.</param>
    public static EntityTagHeaderValue TagOf(ReadOnlySpan<byte> answer) => new($"\"{Base64Url.EncodeToString(SHA256.HashData(answer))}\"");
}

/// <summary>Marks a route that saves, heeds <c>If-Match</c> and <c>If-None-Match</c>, and answers with the ETag of what it has saved.</summary>
internal sealed class ConditionalMetadata;

/// <summary>Marks a route whose answers have an ETag.</summary>
internal sealed class RevalidatedMetadata;
