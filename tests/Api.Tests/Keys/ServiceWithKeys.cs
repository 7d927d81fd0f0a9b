using System.Collections.Concurrent;
using System.Net.Http.Headers;
using Microsoft.Extensions.DependencyInjection;
using Storage;
using Storage.Keys;

namespace Api.Tests.Keys;

/// <summary>The service in this process, with keys.</summary>
public sealed class ServiceWithKeys : IDisposable
{
    private readonly ServiceInProcess _service = new();
    private readonly ConcurrentDictionary<string, Task<string>> _known = new(StringComparer.Ordinal);

    /// <summary>A moment that is past for the service.</summary>
    public static DateTimeOffset Past => ServiceInProcess.Now.AddDays(-1);

    public ServiceInProcess Inner => _service;

    public KeyStore Keys => _service.Services.GetRequiredService<KeyStore>();

    /// <summary>A client that shows no key.</summary>
    public HttpClient Nobody => _service.CreateClient();

    /// <summary>Makes a key.</summary>
    public async Task<string> NewKey(string tenant, params KeyScope[] scopes) =>
        await Keys.AddAsync(new Tenant(tenant), scopes, "", ServiceInProcess.Now, expiresAt: null, CancellationToken.None);

    /// <summary>A key that is in use already, the same one for the same tenant and scopes.</summary>
    public Task<string> KeyOf(string tenant, params KeyScope[] scopes) => _known.GetOrAdd($"{tenant} {string.Join(' ', scopes)}", async _ =>
    {
        var key = await NewKey(tenant, scopes);
        await Seen();
        return key;
    });

    /// <summary>A client that shows such a key.</summary>
    public async Task<HttpClient> ClientOf(string tenant, params KeyScope[] scopes) => With(await KeyOf(tenant, scopes));

    /// <summary>A client that shows this key.</summary>
    public HttpClient With(string key)
    {
        var client = _service.CreateClient();
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return client;
    }

    /// <summary>Waits until what was changed in the store is seen: the service reads its keys once a second.</summary>
    public static Task Seen() => Task.Delay(TimeSpan.FromSeconds(1.2));

    public void Dispose() => _service.Dispose();
}
