using System.Net;
using ComplianceApi.Api.Requests;

namespace Api.Tests;

/// <summary>With the real server on a free port of this machine.</summary>
public sealed class RunningServiceTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const string Loopback = "--urls=http://127.0.0.1:0";

    [Fact]
    public async Task It_judges_stores_and_reads_back_without_any_setting_up()
    {
        using var running = new RunningService(Loopback);
        using var client = await running.Listening();

        var posted = await client.PostRecord(service.ExampleRecord);
        var read = await client.GetAsync(posted.Headers.Location);

        Assert.Equal("pass", (await posted.Read(HttpStatusCode.Created))["outcome"].Text());
        Assert.Equal(await posted.Content.ReadAsByteArrayAsync(), await read.Content.ReadAsByteArrayAsync());
        Assert.Equal(service.ExampleRecord, await client.GetByteArrayAsync($"{posted.Headers.Location}/record"));
        Assert.False(read.Headers.Contains("Server"));
        Assert.True(File.Exists(running.StoreFile));
    }

    [Fact]
    public async Task What_it_answered_survives_a_kill()
    {
        using var first = new RunningService(Loopback);
        using var client = await first.Listening();
        var posted = await client.PostRecord(service.ExampleRecord);
        first.Kill();

        using var second = new RunningService(Loopback, $"--Store:Path={first.StoreFile}");
        using var again = await second.Listening();

        Assert.Equal(await posted.Content.ReadAsByteArrayAsync(), await again.GetByteArrayAsync(posted.Headers.Location));
    }

    [Fact]
    public async Task It_refuses_what_is_too_large_or_forwarded()
    {
        using var running = new RunningService(Loopback);
        using var client = await running.Listening();

        foreach (var content in new HttpContent[] { Calls.Json(new byte[JsonBody.MaxBytes + 1]), Chunked(JsonBody.MaxBytes + 1) })
        {
            var problem = await (await client.PostAsync("/v1/evaluations", content)).Read(HttpStatusCode.RequestEntityTooLarge);
            Assert.Equal("/problems/body-too-large", problem["type"].Text());
        }

        var forwarded = new HttpRequestMessage(HttpMethod.Get, "/v1/rules") { Headers = { { "X-Forwarded-For", "127.0.0.1" } } };
        Assert.Equal(HttpStatusCode.Forbidden, (await client.SendAsync(forwarded)).StatusCode);
        var foreign = new HttpRequestMessage(HttpMethod.Get, "/v1/rules") { Headers = { Host = "example.org" } };
        Assert.Equal(HttpStatusCode.Forbidden, (await client.SendAsync(foreign)).StatusCode);
    }

    [Theory]
    [InlineData("no-such-file.json", "cannot be read")]
    [InlineData("""[{ "id": "hot-pressure", "what": "x", "max": 3, "unit": "bar", "resolution": 0.1, "origin": "deployer", "source": "x", "verified": true, "who": "x", "why": "x" }]""", "does not say \"loosens\": true")]
    public async Task It_does_not_start_with_overrides_that_do_not_fit(string overrides, string because)
    {
        var file = overrides;
        if (overrides.StartsWith('['))
        {
            file = Path.GetTempFileName();
            await File.WriteAllTextAsync(file, overrides);
        }

        using var running = new RunningService(Loopback, $"--Rules:Overrides={file}");
        var (exitCode, said) = await running.Ended();

        Assert.Equal(1, exitCode);
        Assert.Contains(because, said, StringComparison.Ordinal);
        File.Delete(file);
    }

    [Theory]
    [InlineData("--Rules:Override=limits.json", "Rules:Override: there is no such setting. Those of Rules: Rules:Overrides.")]
    [InlineData("--Limits:RequestsPerMinut=5", "Limits:RequestsPerMinut: there is no such setting.")]
    [InlineData("--urls=nonsense", "'nonsense' is no address such as http://127.0.0.1:5080.")]
    public async Task It_does_not_start_with_a_setting_that_it_cannot_follow(string argument, string because)
    {
        using var running = new RunningService(argument);

        var (exitCode, said) = await running.Ended();

        Assert.Equal(1, exitCode);
        Assert.Contains(because, said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Head_has_the_headers_of_get_and_no_body()
    {
        using var running = new RunningService(Loopback);
        using var client = await running.Listening();

        var got = await client.GetAsync("/v1/limits");
        var head = await client.SendAsync(new HttpRequestMessage(HttpMethod.Head, "/v1/limits"));

        Assert.Equal((got.StatusCode, got.Headers.ETag, got.Content.Headers.ContentType), (head.StatusCode, head.Headers.ETag, head.Content.Headers.ContentType));
        Assert.Empty(await head.Content.ReadAsByteArrayAsync());
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await client.SendAsync(new HttpRequestMessage(HttpMethod.Head, "/v1/nothing"))).StatusCode);
    }

    /// <summary>The address that README and guide name. The port may be taken, by another service on this machine, and then is named all the same.</summary>
    [Fact]
    public async Task Without_an_address_it_listens_where_the_texts_say()
    {
        using var running = new RunningService();
        try
        {
            using var client = await running.Listening();
            Assert.Equal(new Uri("http://127.0.0.1:5080"), client.BaseAddress);
        }
        catch (InvalidOperationException taken)
        {
            Assert.Contains("127.0.0.1:5080: address already in use", taken.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("--urls=http://0.0.0.0:0")]
    [InlineData("--urls=http://*:0")]
    [InlineData("--urls=http://127.0.0.1:0;http://[::]:0")]
    [InlineData("--http_ports=8080")]
    [InlineData("--Kestrel:Endpoints:Open:Url=http://0.0.0.0:0")]
    public async Task It_does_not_listen_to_the_world(string argument)
    {
        using var running = new RunningService(argument);

        var (exitCode, said) = await running.Ended();

        Assert.Equal(1, exitCode);
        Assert.Matches("^[^\n]*no key is in use[^\n]*\n$", said);
        Assert.Empty(running.Logged);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_said_in_one_line()
    {
        using var first = new RunningService(Loopback);
        using var client = await first.Listening();
        using var second = new RunningService($"--urls={client.BaseAddress}");

        var (exitCode, said) = await second.Ended();

        Assert.Equal(1, exitCode);
        Assert.Matches($"^[^\n]*{client.BaseAddress!.Authority}: address already in use[^\n]* take another port[^\n]*\n$", said);
        Assert.Empty(second.Logged);
    }

    [Fact]
    public async Task It_does_not_start_without_a_store()
    {
        using var running = new RunningService(Loopback, $"--Store:Path={Path.Combine(typeof(Program).Assembly.Location, "compliance.db")}", "--Store:Create=true");

        var (exitCode, said) = await running.Ended();

        Assert.Equal(1, exitCode);
        Assert.StartsWith("The store ", said, StringComparison.Ordinal);
    }

    private static StreamContent Chunked(int length)
    {
        var content = new StreamContent(new Unsized(length));
        content.Headers.ContentType = new("application/json");
        return content;
    }

    /// <summary>Zeros that do not say beforehand how many they are.</summary>
    private sealed class Unsized(int length) : MemoryStream(new byte[length])
    {
        public override bool CanSeek => false;
    }
}
