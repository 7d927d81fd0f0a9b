using System.Globalization;
using System.Threading.RateLimiting;
using ComplianceApi.Configuration;
using ComplianceApi.Problems;

namespace ComplianceApi.Guard;

/// <summary>
/// How many requests the holder of a key may make, and how many an address without a right one: <c>Limits:RequestsPerMinute</c>, used up
/// at once or bit by bit; a sixtieth of it comes back each second. Where no key is asked for, nothing is counted. Every answer says what
/// is left (draft-ietf-httpapi-ratelimit-headers-11, a draft still).
/// </summary>
internal sealed class RateLimits : IDisposable
{
    private const int Absent = 6000;
    private const int Minute = 60;

    private readonly int _perMinute;
    private readonly PartitionedRateLimiter<HttpContext> _limiter;

    public RateLimits(IConfiguration configuration)
    {
        _perMinute = Settings.Whole(configuration, SettingNames.RequestsPerMinute, Absent);
        _limiter = PartitionedRateLimiter.Create<HttpContext, string>(context => RateLimitPartition.GetTokenBucketLimiter(WhoOf(context), _ => new TokenBucketRateLimiterOptions
        {
            TokenLimit = _perMinute,
            TokensPerPeriod = Math.Max(1, _perMinute / Minute),
            ReplenishmentPeriod = TimeSpan.FromSeconds(1),
            QueueLimit = 0,
        }));
    }

    /// <summary>Counts, refuses and says what is left.</summary>
    public static void Use(WebApplication app)
    {
        var limits = app.Services.GetRequiredService<RateLimits>();
        app.Use(async (context, next) =>
        {
            if (context.RequestServices.GetRequiredService<Caller>() is { IsIn: true, Key: null })
            {
                await next(context);
                return;
            }

            using var lease = limits._limiter.AttemptAcquire(context);
            limits.Announce(context);
            if (lease.IsAcquired)
                await next(context);
            else
                await new ProblemResult(ProblemKind.TooManyRequests).ExecuteAsync(context);
        });
    }

    public void Dispose() => _limiter.Dispose();

    private static string WhoOf(HttpContext context) => context.RequestServices.GetRequiredService<Caller>().Key is { } key
        ? $"key {key.Id}"
        : $"from {context.Connection.RemoteIpAddress}";

    private void Announce(HttpContext context)
    {
        var left = _limiter.GetStatistics(context)?.CurrentAvailablePermits ?? 0;
        context.Response.Headers["RateLimit-Policy"] = string.Create(CultureInfo.InvariantCulture, $"\"requests\";q={_perMinute};w={Minute}");
        context.Response.Headers["RateLimit"] = string.Create(CultureInfo.InvariantCulture, $"\"requests\";r={left};t=1");
    }
}
