using ComplianceApi.Problems;

namespace ComplianceApi.Guard;

/// <summary>Headers that every answer carries, pages and failures as well.</summary>
public static class SecurityHeaders
{
    private const string ForAnswers = "default-src 'none'; frame-ancestors 'none'";

    /// <summary>The policy of the pages: scripts, styles and type from files of this service, calls to this service, nothing else.</summary>
    private const string ForPages =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; "
        + "base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>The policy of the documentation page, whose own library writes styles into it.</summary>
    private const string ForDocs =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>Adds them.</summary>
    public static void UseSecurityHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(() =>
        {
            var headers = context.Response.Headers;
            headers.XContentTypeOptions = "nosniff";
            if (headers.ContentSecurityPolicy.Count == 0)
                headers.ContentSecurityPolicy = PolicyOf(context);

            // Not no-referrer: browsers then hide from this service, too, that a form is its own.
            headers["Referrer-Policy"] = "same-origin";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            if (headers.CacheControl.Count == 0 && context.GetEndpoint()?.Metadata.GetMetadata<NeverCachedMetadata>() is not null)
                headers.CacheControl = "no-store";
            return Task.CompletedTask;
        });
        return next(context);
    });

    private static string PolicyOf(HttpContext context) =>
        ProblemHandling.EndpointOf(context)?.Metadata.GetMetadata<BrowserRoute>() is not null ? ForPages
        : context.Request.Path.StartsWithSegments("/docs", StringComparison.Ordinal) ? ForDocs
        : ForAnswers;

    /// <summary>The answers of these routes hold what a record says and belong in no cache, unless one says that whoever asked may keep it.</summary>
    public static RouteGroupBuilder NeverCached(this RouteGroupBuilder group) => group.WithMetadata(new NeverCachedMetadata());

    private sealed class NeverCachedMetadata;
}
