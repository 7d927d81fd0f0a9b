using System.Globalization;

namespace ComplianceApi.Api.Requests;

/// <summary>How a route is taken out of use: its answers say so long before it goes, and so do the documents.</summary>
/// <param name="Since">From when on it is deprecated (RFC 9745).</param>
/// <param name="Until">When it will stop to answer (RFC 8594), where that is known.</param>
/// <param name="Explanation">Path of a page that says what to use instead.</param>
public sealed record Deprecation(DateTimeOffset Since, DateTimeOffset? Until, string Explanation)
{
    /// <summary>Writes the headers.</summary>
    public void AddTo(IHeaderDictionary headers)
    {
        headers["Deprecation"] = string.Create(CultureInfo.InvariantCulture, $"@{Since.ToUnixTimeSeconds()}");
        headers.Append("Link", $"<{Explanation}>; rel=\"deprecation\"");
        if (Until is { } until)
        {
            headers["Sunset"] = until.ToString("R", CultureInfo.InvariantCulture);
            headers.Append("Link", $"<{Explanation}>; rel=\"sunset\"");
        }
    }
}

/// <summary>Marks routes as deprecated.</summary>
public static class Deprecations
{
    /// <summary>Every answer of the route says that it is deprecated, refusals as well.</summary>
    public static TBuilder Deprecated<TBuilder>(this TBuilder route, Deprecation deprecation) where TBuilder : IEndpointConventionBuilder =>
        route.WithMetadata(deprecation).AddEndpointFilter((context, next) =>
        {
            deprecation.AddTo(context.HttpContext.Response.Headers);
            return next(context);
        });
}
