using Storage.Keys;

namespace ComplianceApi.Guard;

/// <summary>
/// A page in a browser cannot send a key with each request, so the browser is given a secret of its own for one that was shown once. It
/// opens what the key opens, and nothing once the key is expired or revoked. Scripts cannot read it, and no other site can have it sent.
/// </summary>
internal sealed class PageSessions(KeyStore store, KeyRing ring, TimeProvider clock)
{
    private const string Cookie = "compliance-session";
    private static readonly TimeSpan Lasts = TimeSpan.FromHours(12);

    /// <summary>The key behind the browser's secret; null when there is none, or when another site has the browser send a change.</summary>
    public async Task<ApiKey?> FindAsync(HttpContext context)
    {
        var cancel = context.RequestAborted;
        return context.Request.Cookies[Cookie] is { Length: > 0 and < 100 } secret && (IsReading(context.Request) || IsOwn(context.Request))
            && await store.FindSessionAsync(secret, clock.GetUtcNow(), cancel) is { } keyId
            ? await ring.FindByIdAsync(keyId, cancel)
            : null;
    }

    /// <summary>Gives the browser a secret for this key.</summary>
    public async Task BeginAsync(HttpContext context, ApiKey key) =>
        context.Response.Cookies.Append(Cookie, await store.BeginSessionAsync(key.Id, clock.GetUtcNow() + Lasts, context.RequestAborted), Options(context));

    /// <summary>Takes it back.</summary>
    public async Task EndAsync(HttpContext context)
    {
        if (context.Request.Cookies[Cookie] is { Length: > 0 and < 100 } secret)
            await store.EndSessionAsync(secret, clock.GetUtcNow(), context.RequestAborted);
        context.Response.Cookies.Delete(Cookie, Options(context));
    }

    /// <summary>Was the request made by a page of this service? Browsers say so, and pages cannot make them say otherwise.</summary>
    public static bool IsOwn(HttpRequest request) => request.Headers.Origin is [{ } origin] && origin == $"{request.Scheme}://{request.Host}";

    private static bool IsReading(HttpRequest request) => HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);

    private static CookieOptions Options(HttpContext context) =>
        new() { HttpOnly = true, SameSite = SameSiteMode.Strict, Secure = context.Request.IsHttps, Path = "/", IsEssential = true };
}
