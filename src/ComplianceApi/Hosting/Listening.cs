using ComplianceApi.Api.Requests;
using ComplianceApi.Configuration;
using ComplianceApi.Guard;

namespace ComplianceApi.Hosting;

/// <summary>Where the server listens, and what it demands before it does.</summary>
internal static class Listening
{
    /// <summary>The port that is taken where no setting names an address.</summary>
    public const int UsualPort = 5080;

    private static readonly string[] AddressSettings = [WebHostDefaults.ServerUrlsKey, WebHostDefaults.HttpPortsKey, WebHostDefaults.HttpsPortsKey];

    /// <summary>Lets the server listen on loopback; elsewhere only where a key is in use.</summary>
    /// <exception cref="StartRefusedException">An address cannot be read.</exception>
    public static void ListenGuarded(this WebApplicationBuilder builder)
    {
        DemandAddresses(builder.Configuration[WebHostDefaults.ServerUrlsKey]);
        if (AddressSettings.All(setting => string.IsNullOrEmpty(builder.Configuration[setting])) && !builder.Configuration.GetSection("Kestrel:Endpoints").Exists())
            builder.WebHost.UseUrls($"http://127.0.0.1:{UsualPort}");
        builder.Services.AddSingleton(new Exposure(builder.Configuration));
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.AddServerHeader = false;
            server.Limits.MaxRequestBodySize = JsonBody.MaxBytes;
            server.ConfigureEndpointDefaults(endpoint =>
            {
                var services = server.ApplicationServices;
                var exposure = services.GetRequiredService<Exposure>();
                exposure.Add(endpoint.EndPoint);
                if (exposure.AsksForKeys && !services.GetRequiredService<KeyRing>().HasLiveKeyAsync(CancellationToken.None).GetAwaiter().GetResult())
                {
                    throw new StartRefusedException(!exposure.IsOpen
                        ? $"Not listening on {endpoint}: {SettingNames.KeysRequired} is set, and no key is in use. Make one (the command keys add)."
                        : $"Not listening on {endpoint}: others than this machine could call it, and no key is in use. Make one (the command keys add), or listen on localhost only, for example --urls http://127.0.0.1:{UsualPort}.");
                }
            });
        });
    }

    private static void DemandAddresses(string? urls)
    {
        foreach (var url in (urls ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            try
            {
                _ = BindingAddress.Parse(url);
            }
            catch (FormatException)
            {
                throw new StartRefusedException($"{WebHostDefaults.ServerUrlsKey}: '{url}' is no address such as http://127.0.0.1:{UsualPort}.");
            }
        }
    }

    /// <summary>Warns, once it listens, where keys would travel in the clear.</summary>
    public static void WarnOfPlainText(this WebApplication app) => app.Lifetime.ApplicationStarted.Register(() =>
    {
        if (app.Services.GetRequiredService<Exposure>() is { IsOpen: true, TrustedProxies.Count: 0 } && app.Urls.Any(url => url.StartsWith("http:", StringComparison.OrdinalIgnoreCase)))
            app.Logger.LogWarning("Keys and records travel in the clear: put a proxy with TLS in front and name it in {Setting}, or configure a certificate.", SettingNames.TrustedProxies);
    });
}
