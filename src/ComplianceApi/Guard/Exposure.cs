using System.Net;
using ComplianceApi.Configuration;

namespace ComplianceApi.Guard;

/// <summary>
/// From where the service can be reached. On loopback alone it may go without keys. Where it listens on any other address, or takes
/// requests that a named proxy forwards, it does not start without a key that is in use, and asks for one ever after.
/// </summary>
internal sealed class Exposure
{
    private static readonly string[] ForwardingHeaders =
        ["Forwarded", "Via", "X-Real-IP", "X-Client-IP", "X-Cluster-Client-IP", "True-Client-IP"];

    // X-Original-: what the framework's own forwarding middleware renames them to once it has believed them.
    private static readonly string[] ForwardingPrefixes = ["X-Forwarded", "X-Original-"];

    private readonly bool _areKeysRequired;

    /// <exception cref="StartRefusedException">The settings are no list of addresses, or neither true nor false.</exception>
    public Exposure(IConfiguration configuration)
    {
        TrustedProxies = [.. (configuration[SettingNames.TrustedProxies] ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(AddressOf)];
        IsOpen = TrustedProxies.Count > 0;
        _areKeysRequired = Settings.Flag(configuration, SettingNames.KeysRequired);
    }

    /// <summary>The proxies whose word is taken.</summary>
    public IReadOnlyList<IPAddress> TrustedProxies { get; }

    /// <summary>Can it be reached from elsewhere?</summary>
    public bool IsOpen { get; private set; }

    /// <summary>Is a key asked for even where none is in use?</summary>
    public bool AsksForKeys => IsOpen || _areKeysRequired;

    /// <summary>Notes an endpoint before the server listens on it.</summary>
    public void Add(EndPoint endpoint) => IsOpen |= endpoint is not IPEndPoint { Address: var address } || !IPAddress.IsLoopback(address);

    /// <summary>Does the request come through a proxy whose word is not taken?</summary>
    public bool IsForwardedByStranger(HttpContext context) =>
        context.Request.Headers.Any(header => IsForwarding(header.Key))
        && (context.Connection.RemoteIpAddress is not { } from || !TrustedProxies.Any(proxy => proxy.Equals(from) || proxy.Equals(from.MapToIPv4())));

    private static bool IsForwarding(string header) =>
        ForwardingHeaders.Contains(header, StringComparer.OrdinalIgnoreCase)
        || Array.Exists(ForwardingPrefixes, prefix => header.StartsWith(prefix, StringComparison.OrdinalIgnoreCase));

    private static IPAddress AddressOf(string text) =>
        IPAddress.TryParse(text, out var address) ? address : throw new StartRefusedException($"{SettingNames.TrustedProxies}: '{text}' is no IP address.");
}
