using System.Buffers.Text;
using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace ComplianceApi.Api.Requests;

/// <summary>
/// Gives answers that a caller may keep a strong <c>ETag</c> over their bytes, and answers <c>If-None-Match</c> with 304 and no body
/// while they have not changed (RFC 9110, sections 8.8.3 and 13.1.2). Whoever asked may keep them, and asks again before each use.
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
            response.Headers.CacheControl = "private, no-cache";
            if (KnownBy(context.Request, given) is { } known)
            {
                response.Headers.ETag = known.ToString();
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
            && seen.Any(one => one.Equals(EntityTagHeaderValue.Any) || TagsOf(current).Any(tag => one.Compare(tag, useStrongComparison: true)));
    }

    /// <summary>Does <c>If-None-Match</c> name what is there (RFC 9110, section 13.1.2)?</summary>
    /// <param name="request">The request.</param>
    /// <param name="current">The bytes that GET answers.</param>
    public static bool IsKnown(HttpRequest request, ReadOnlySpan<byte> current)
    {
        ArgumentNullException.ThrowIfNull(request);
        return KnownBy(request, current) is not null;
    }

    /// <summary>The tag, of those that the answer has, which <c>If-None-Match</c> names; null for none.</summary>
    private static EntityTagHeaderValue? KnownBy(HttpRequest request, ReadOnlySpan<byte> current)
    {
        if (!EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out var known))
            return null;

        var tags = TagsOf(current);
        return Array.Find(tags, tag => known.Any(one => one.Compare(tag, useStrongComparison: false))) ?? (known.Contains(EntityTagHeaderValue.Any) ? tags[0] : null);
    }

    /// <summary>The tags of an answer: as it is, and packed in each of the ways in which it may be.</summary>
    private static EntityTagHeaderValue[] TagsOf(ReadOnlySpan<byte> answer)
    {
        var plain = TagOf(answer);
        return [plain, .. AnswerCompression.Codings.Select(coding => Packed(plain, coding))];
    }

    /// <summary>The tag of the same answer when it is packed.</summary>
    internal static EntityTagHeaderValue Packed(EntityTagHeaderValue plain, string coding) => new($"{plain.Tag.AsSpan()[..^1]}-{coding}\"");

    /// <summary>The strong tag of an answer.</summary>
    /// <param name="answer">Its bytes.</param>
    public static EntityTagHeaderValue TagOf(ReadOnlySpan<byte> answer) => new($"\"{Base64Url.EncodeToString(SHA256.HashData(answer))}\"");
}

/// <summary>Marks a route that saves, heeds <c>If-Match</c> and <c>If-None-Match</c>, and answers with the ETag of what it has saved.</summary>
internal sealed class ConditionalMetadata;

/// <summary>Marks a route whose answers have an ETag.</summary>
internal sealed class RevalidatedMetadata;
