using System.Net;
using System.Net.Http.Headers;
using Storage;
using Storage.Keys;

namespace Api.Tests.Keys;

/// <summary>The real server, reachable from elsewhere or not, with and without keys.</summary>
public sealed class ExposureTests : IDisposable
{
    private const string World = "--urls=http://0.0.0.0:0";
    private const string Loopback = "--urls=http://127.0.0.1:0";

    private static readonly DateTimeOffset Now = TimeProvider.System.GetUtcNow();
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("exposure-");

    private string StoreFile => Path.Combine(_folder.FullName, "compliance.db");

    private string Store => $"--Store:Path={StoreFile}";

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData(World)]
    [InlineData("--urls=http://[::]:0")]
    [InlineData("--urls=http://127.0.0.1:0;http://0.0.0.0:0")]
    [InlineData(Loopback, "--Proxy:Trusted=127.0.0.1")]
    public async Task It_does_not_start_without_a_key_in_use(params string[] arguments)
    {
        foreach (var (end, isRevoked) in new[] { ((DateTimeOffset?)null, (bool?)null), (Now.AddMinutes(-1), false), (null, true) })
        {
            using (var database = Database.Open(StoreFile, StoreOpening.OrMake))
            {
                var keys = new KeyStore(database);
                var key = isRevoked is null ? null : await keys.AddAsync(Tenant.Local, [KeyScope.Admin], "", Now.AddDays(-2), end, CancellationToken.None);
                if (isRevoked == true)
                    await keys.RevokeAsync(KeyText.IdOf(key!), Now, CancellationToken.None);
            }

            using var running = new RunningService([.. arguments, Store]);
            var (exitCode, said) = await running.Ended();

            Assert.Equal(1, exitCode);
            Assert.Contains("no key is in use", said, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(World, "192.0.2.1", null)]
    [InlineData(Loopback, "localhost", null)]
    [InlineData(Loopback, "boilers.example.org", "127.0.0.1")]
    public async Task With_a_key_it_starts_and_asks_everyone_for_one(string urls, string host, string? proxy)
    {
        var key = await Add(KeyScope.Read);
        using var running = new RunningService(urls, Store, $"--Proxy:Trusted={proxy}");
        using var client = await running.Listening();

        Assert.Equal(HttpStatusCode.Unauthorized, (await Get(client, host, key: null)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Get(client, host, key)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Get(client, host, key: null, path: "/health/ready")).StatusCode);
        var forwarded = await Get(client, host, key, forwardedFor: "192.0.2.7");
        Assert.Equal(proxy is null ? HttpStatusCode.Forbidden : HttpStatusCode.OK, forwarded.StatusCode);
    }

    [Fact]
    public async Task The_first_key_closes_a_service_that_runs_without()
    {
        using var running = new RunningService(Loopback, Store, "--Store:Create=true");
        using var client = await running.Listening();
        Assert.Equal(HttpStatusCode.OK, (await Get(client, "localhost", key: null)).StatusCode);

        var key = await Add(KeyScope.Read);
        await ServiceWithKeys.Seen();

        Assert.Equal(HttpStatusCode.Unauthorized, (await Get(client, "localhost", key: null)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Get(client, "localhost", key)).StatusCode);
    }

    [Fact]
    public async Task Keys_are_made_listed_and_revoked_on_the_command_line()
    {
        using var add = new RunningService("keys", "add", "read,evaluate", "--tenant", "a", "--expires", "2199-12-31", "--note", "job system", "--path", StoreFile, "--create");
        var key = (await add.Printed()).Trim();
        using var list = new RunningService("keys", "list", "--path", StoreFile);
        Assert.Matches($"^{KeyText.IdOf(key)}  a  read,evaluate  until 2199-12-31  [0-9-]{{10}}  job system$", (await list.Printed()).Trim());

        using (var running = new RunningService(World, Store))
        {
            using var client = await running.Listening();
            Assert.Equal(HttpStatusCode.OK, (await Get(client, "localhost", key)).StatusCode);
        }

        using var revoke = new RunningService("keys", "revoke", KeyText.IdOf(key), "--path", StoreFile);
        Assert.Equal(0, (await revoke.Ended()).ExitCode);
        using var again = new RunningService("keys", "revoke", KeyText.IdOf(key), "--path", StoreFile);
        Assert.Equal(1, (await again.Ended()).ExitCode);
    }

    [Theory]
    [InlineData("keys", "add")]
    [InlineData("keys", "add", "everything")]
    [InlineData("keys", "add", "read", "--tenant", "")]
    [InlineData("keys", "add", "read", "--tenant", "../b")]
    [InlineData("keys", "add", "read", "--expires", "2020-01-01")]
    [InlineData("keys", "add", "read", "--expires", "soon")]
    public async Task What_makes_no_sense_makes_no_key(params string[] arguments)
    {
        using var refused = new RunningService([.. arguments, "--path", StoreFile, "--create"]);

        Assert.NotEqual(0, (await refused.Ended()).ExitCode);
        using var database = Database.Open(StoreFile, StoreOpening.OrMake);
        Assert.Empty(await new KeyStore(database).ListAsync(CancellationToken.None));
    }

    private async Task<string> Add(KeyScope scope)
    {
        using var database = Database.Open(StoreFile, StoreOpening.OrMake);
        return await new KeyStore(database).AddAsync(Tenant.Local, [scope], "", Now, expiresAt: null, CancellationToken.None);
    }

    private static Task<HttpResponseMessage> Get(HttpClient client, string host, string? key, string path = "/v1/audits", string? forwardedFor = null)
    {
        var url = new UriBuilder(client.BaseAddress!) { Host = "127.0.0.1", Path = path }.Uri;
        var request = new HttpRequestMessage(HttpMethod.Get, url) { Headers = { Host = host } };
        if (key is not null)
            request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
        if (forwardedFor is not null)
            request.Headers.Add("X-Forwarded-For", forwardedFor);
        return client.SendAsync(request);
    }
}
