using System.Net;
using Audits;

namespace ComplianceApi;

/// <summary>
/// This service asks for no key. What makes that right is that only programs on its own machine can reach it, so it refuses to listen
/// elsewhere, and refuses requests that only seem to come from here: forwarded ones, and ones made under another host's name (a web
/// page can have its own name point to 127.0.0.1).
/// </summary>
public static class LocalOnly
{
    private static readonly string[] Hosts = ["localhost", "127.0.0.1", "[::1]"];

    private static readonly string[] ForwardingHeaders =
        ["Forwarded", "Via", "X-Real-IP", "X-Client-IP", "X-Cluster-Client-IP", "True-Client-IP"];

    // X-Original-: what the framework's own forwarding middleware renames them to once it has believed them.
    private static readonly string[] ForwardingPrefixes = ["X-Forwarded", "X-Original-"];

    /// <summary>Lets the server listen on loopback addresses only.</summary>
    public static void ListenOnLoopbackOnly(this WebApplicationBuilder builder) => builder.WebHost.ConfigureKestrel(server =>
    {
        server.AddServerHeader = false;
        server.Limits.MaxRequestBodySize = JsonBody.MaxBytes;
        server.ConfigureEndpointDefaults(endpoint =>
        {
            if (endpoint.IPEndPoint is not { } address || !IPAddress.IsLoopback(address.Address))
            {
                throw new StartRefusedException(
                    $"Not listening on {endpoint}: this service asks for no key yet, so it listens on localhost only. Use for example --urls http://localhost:5000.");
            }
        });
    });

    /// <summary>Refuses requests that did not begin on this machine.</summary>
    public static void UseLocalOnly(this WebApplication app) => app.Use((context, next) =>
    {
        if (RefusalOf(context) is { } refusal)
            return new ProblemResult(refusal).ExecuteAsync(context);

        context.RequestServices.GetRequiredService<Caller>().EnterAs(Tenant.Local);
        return next(context);
    });

    private static ProblemKind? RefusalOf(HttpContext context)
    {
        if (context.Request.Headers.Any(header => IsForwarding(header.Key)) || context.Connection.RemoteIpAddress is { } remote && !IPAddress.IsLoopback(remote))
            return ProblemKind.ForwardedRequest;

        return Hosts.Contains(context.Request.Host.Host, StringComparer.OrdinalIgnoreCase) ? null : ProblemKind.ForeignHost;
    }

    private static bool IsForwarding(string header) =>
        ForwardingHeaders.Contains(header, StringComparer.OrdinalIgnoreCase)
        || Array.Exists(ForwardingPrefixes, prefix => header.StartsWith(prefix, StringComparison.OrdinalIgnoreCase));
}

/// <summary>The service does not start, for a reason that its operator can mend.</summary>
public sealed class StartRefusedException(string message) : Exception(message);
