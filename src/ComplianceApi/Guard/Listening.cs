namespace ComplianceApi;

/// <summary>Where the server listens, and what it demands before it does.</summary>
internal static class Listening
{
    /// <summary>Lets the server listen on loopback; elsewhere only where a key is in use.</summary>
    public static void ListenGuarded(this WebApplicationBuilder builder)
    {
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
                if (exposure.IsOpen && !services.GetRequiredService<KeyRing>().HasLiveKeyAsync(CancellationToken.None).GetAwaiter().GetResult())
                {
                    throw new StartRefusedException(
                        $"Not listening on {endpoint}: others than this machine could call it, and no key is in use. Make one (the command keys add), or listen on localhost only, for example --urls http://localhost:5000.");
                }
            });
        });
    }

    /// <summary>Warns, once it listens, where keys would travel in the clear.</summary>
    public static void WarnOfPlainText(this WebApplication app) => app.Lifetime.ApplicationStarted.Register(() =>
    {
        if (app.Services.GetRequiredService<Exposure>() is { IsOpen: true, TrustedProxies.Count: 0 } && app.Urls.Any(url => url.StartsWith("http:", StringComparison.OrdinalIgnoreCase)))
            app.Logger.LogWarning("Keys and records travel in the clear: put a proxy with TLS in front and name it in {Setting}, or configure a certificate.", Exposure.Setting);
    });
}
