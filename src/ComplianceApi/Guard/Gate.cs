using System.Data.Common;
using ComplianceApi.Problems;
using Microsoft.AspNetCore.HttpOverrides;
using Storage.Keys;

namespace ComplianceApi.Guard;

/// <summary>
/// Finds out who calls, and lets in who may. Two steps, so that what is counted for each caller can be counted in between: refusals are
/// counted as well.
/// </summary>
internal sealed class Gate(KeyRing ring, PageSessions sessions, Exposure exposure)
{
    private const string Scheme = "Bearer ";

    private readonly Exposure _exposure = exposure;

    /// <summary>Adds what it needs.</summary>
    public static void AddTo(IServiceCollection services)
    {
        Caller.AddTo(services);
        services.AddSingleton<KeyStore>();
        services.AddSingleton<KeyRing>();
        services.AddSingleton<PageSessions>();
        services.AddSingleton<Gate>();
    }

    /// <summary>Finds out who calls.</summary>
    public static void UseCallers(WebApplication app)
    {
        var gate = app.Services.GetRequiredService<Gate>();
        app.Use((context, next) => gate._exposure.IsForwardedByStranger(context) ? new ProblemResult(ProblemKind.ForwardedRequest).ExecuteAsync(context) : next(context));
        if (gate._exposure.TrustedProxies.Count > 0)
        {
            var options = new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto };
            options.KnownIPNetworks.Clear();
            options.KnownProxies.Clear();
            foreach (var proxy in gate._exposure.TrustedProxies)
                options.KnownProxies.Add(proxy);
            app.UseForwardedHeaders(options);
        }

        app.Use(async (context, next) =>
        {
            if (await gate.EnterAsync(context) is { } refusal)
                await new ProblemResult(refusal).ExecuteAsync(context);
            else
                await next(context);
        });
    }

    /// <summary>Lets in who may do what the route does.</summary>
    public static void UseAccess(WebApplication app) => app.Use(async (context, next) =>
    {
        var access = Access.Of(context.GetEndpoint());
        var caller = context.RequestServices.GetRequiredService<Caller>();
        if (caller.May(access))
            await next(context);
        else if (caller.IsIn)
            await RefuseAsync(context, ProblemKind.ScopeMissing, $"""Bearer error="insufficient_scope", scope="{Wire.WireNames.Of(access.Scope!.Value)}" """.TrimEnd());
        else if (HttpMethods.IsGet(context.Request.Method) && context.GetEndpoint()!.Metadata.GetMetadata<BrowserRoute>() is { } route)
            route.SendToSignIn(context);
        else
            await RefuseAsync(context, ProblemKind.KeyNeeded, context.Request.Headers.Authorization.Count == 0 ? "Bearer" : """Bearer error="invalid_token" """.TrimEnd());
    });

    private static Task RefuseAsync(HttpContext context, ProblemKind kind, string challenge)
    {
        context.Response.Headers.WWWAuthenticate = challenge;
        return new ProblemResult(kind).ExecuteAsync(context);
    }

    private async Task<ProblemKind?> EnterAsync(HttpContext context)
    {
        var caller = context.RequestServices.GetRequiredService<Caller>();
        try
        {
            if (_exposure.AsksForKeys || await ring.HasKeysAsync(context.RequestAborted))
            {
                if (await FindKeyAsync(context) is { } key)
                    caller.Enter(key);
                return null;
            }
        }
        catch (DbException) when (Access.Of(context.GetEndpoint()).IsOpen)
        {
            // Without its store the service still says that it is alive, to nobody in particular.
            return null;
        }

        var refusal = LocalOnly.RefusalOf(context);
        if (refusal is null)
            caller.EnterWithoutKey();
        return refusal;
    }

    private async Task<ApiKey?> FindKeyAsync(HttpContext context)
    {
        var given = context.Request.Headers.Authorization;
        if (given.Count == 0)
            return await sessions.FindAsync(context);

        return given is [{ } one] && one.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase)
            ? await ring.FindAsync(one[Scheme.Length..].Trim(), context.RequestAborted)
            : null;
    }
}
