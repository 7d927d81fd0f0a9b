using System.Diagnostics;
using ComplianceApi.Guard;

namespace ComplianceApi.Operations;

/// <summary>
/// One entry for each request, by the route's template and never by its path or query, which may name an appliance or a person. What was
/// refused for want of a key, of a scope or of patience is told at the default level; the rest is, at the level Debug.
/// </summary>
internal static partial class RequestLog
{
    /// <summary>Category of the entries.</summary>
    public const string Category = "ComplianceApi.Requests";

    /// <summary>Adds it, outside of everything else.</summary>
    public static void UseRequestLog(this WebApplication app)
    {
        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger(Category);
        var clock = app.Services.GetRequiredService<TimeProvider>();
        app.Use(async (context, next) =>
        {
            var began = clock.GetTimestamp();
            try
            {
                await next(context);
            }
            finally
            {
                Note(context, log, clock.GetElapsedTime(began));
            }
        });
    }

    private static void Note(HttpContext context, ILogger log, TimeSpan took)
    {
        var route = (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText is { } pattern ? $"/{pattern.Trim('/')}" : "none";
        var status = context.Response.StatusCode;
        var key = context.RequestServices?.GetService<Caller>()?.Key;
        if (Activity.Current is { } activity)
        {
            activity.DisplayName = $"{context.Request.Method} {route}";
            activity.SetTag("http.request.method", context.Request.Method);
            activity.SetTag("http.route", route);
            activity.SetTag("http.response.status_code", status);
        }

        Answered(log, status is 401 or 403 or 429 ? LogLevel.Information : LogLevel.Debug,
            context.Request.Method, route, status, (long)took.TotalMilliseconds, key?.Id ?? "none", key?.Tenant.Name ?? "none", Activity.Current?.TraceId.ToHexString() ?? context.TraceIdentifier);
    }

    [LoggerMessage(Message = "{Method} {Route} answered {Status} after {Milliseconds} ms; key {Key}, tenant {Tenant}, trace {TraceId}")]
    private static partial void Answered(ILogger log, LogLevel level, string method, string route, int status, long milliseconds, string key, string tenant, string traceId);
}
