using System.Net;
using ComplianceApi.Problems;

namespace ComplianceApi.Guard;

/// <summary>
/// What makes it right to ask for no key: only programs on the same machine can reach the service. So it refuses what only seems to come
/// from here: what a proxy forwards, and what is made under another host's name (a web page can have its own name point to 127.0.0.1).
/// </summary>
internal static class LocalOnly
{
    private static readonly string[] Hosts = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>Why a request without a key is refused; null where it is not.</summary>
    public static ProblemKind? RefusalOf(HttpContext context)
    {
        if (context.Connection.RemoteIpAddress is { } remote && !IPAddress.IsLoopback(remote))
            return ProblemKind.ForwardedRequest;

        return Hosts.Contains(context.Request.Host.Host, StringComparer.OrdinalIgnoreCase) ? null : ProblemKind.ForeignHost;
    }
}
