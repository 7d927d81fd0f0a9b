using System.Net;
using System.Text.Json.Nodes;
using ComplianceApi.Api.Evaluations;
using ComplianceApi.Api.Requests;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Storage;

namespace Api.Tests;

/// <summary>A caller who got no answer can ask again; one who has an answer need not load it again.</summary>
public sealed class RetryTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task The_same_key_with_the_same_request_gives_the_same_evaluation_in_the_same_bytes()
    {
        var first = await Post(_client, "\"a-key\"", service.ExampleRecord, "?include=problems");
        var second = await Post(_client, "\"a-key\"", service.ExampleRecord, "?include=problems");

        Assert.Equal((HttpStatusCode.Created, HttpStatusCode.Created), (first.StatusCode, second.StatusCode));
        Assert.Equal(first.Headers.Location, second.Headers.Location);
        Assert.Equal(await first.Content.ReadAsByteArrayAsync(), await second.Content.ReadAsByteArrayAsync());
        Assert.NotEqual(first.Headers.Location, (await Post(_client, "\"another\"", service.ExampleRecord, "?include=problems")).Headers.Location);
    }

    [Fact]
    public async Task A_key_with_another_body_or_query_is_refused_and_makes_nothing()
    {
        await Post(_client, "k1", service.ExampleRecord);

        foreach (var (body, query) in new[] { (service.ExampleRecord.With(record => record["recordId"] = "other"), ""), (service.ExampleRecord, "?include=all") })
        {
            var problem = await (await Post(_client, "k1", body, query)).Read(HttpStatusCode.UnprocessableEntity);
            Assert.Equal("/problems/idempotency-key-reused", problem["type"].Text());
        }
    }

    [Fact]
    public async Task A_refused_record_leaves_its_key_free()
    {
        await (await Post(_client, "k2", "{}"u8.ToArray())).Read(HttpStatusCode.UnprocessableEntity);

        await (await Post(_client, "k2", service.ExampleRecord)).Read(HttpStatusCode.Created);
    }

    [Fact]
    public async Task A_corrected_record_posted_twice_supersedes_once_and_is_answered_twice()
    {
        var superseded = await (await _client.PostRecord(service.ExampleRecord)).Read(HttpStatusCode.Created);
        var corrected = service.ExampleRecord.With(record => record["supersedes"] = superseded["evaluationId"].Text());

        var first = await (await Post(_client, "k3", corrected)).Read(HttpStatusCode.Created);
        var second = await (await Post(_client, "k3", corrected)).Read(HttpStatusCode.Created);

        Assert.Equal(first["evaluationId"].Text(), second["evaluationId"].Text());
    }

    [Theory]
    [InlineData("a b")]
    [InlineData("é")]
    [InlineData("a,b\u0001")]
    public async Task What_is_no_key_is_refused(string key)
    {
        var problem = await (await Post(_client, key, service.ExampleRecord)).Read(HttpStatusCode.BadRequest);

        Assert.Equal(["Idempotency-Key"], problem["errors"].Texts("parameter"));
    }

    [Fact]
    public async Task While_a_request_is_under_way_its_key_is_in_use_and_afterwards_it_is_not()
    {
        var repeats = service.Services.GetRequiredService<Repeats>();
        var first = await repeats.BeginAsync(Tenant.Local, "k4", "", service.ExampleRecord, CancellationToken.None);

        var problem = await (await Post(_client, "k4", service.ExampleRecord)).Read(HttpStatusCode.Conflict);
        Assert.Equal("/problems/idempotency-key-in-flight", problem["type"].Text());

        await first.DisposeAsync();
        await (await Post(_client, "k4", service.ExampleRecord)).Read(HttpStatusCode.Created);
    }

    [Fact]
    public async Task Many_at_once_with_one_key_make_one_evaluation()
    {
        var answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => Post(_client, "k5", service.ExampleRecord)));

        Assert.All(answers, answer => Assert.True(answer.StatusCode is HttpStatusCode.Created or HttpStatusCode.Conflict, answer.StatusCode.ToString()));
        Assert.Single(answers.Where(answer => answer.StatusCode == HttpStatusCode.Created).Select(answer => answer.Headers.Location).Distinct());
    }

    [Fact]
    public async Task A_key_outlives_the_process()
    {
        using var first = new RunningService("--urls=http://127.0.0.1:0");
        using var client = await first.Listening();
        var posted = await Post(client, "k6", service.ExampleRecord);
        first.Kill();

        using var second = new RunningService("--urls=http://127.0.0.1:0", $"--Store:Path={first.StoreFile}");
        using var again = await second.Listening();

        Assert.Equal(posted.Headers.Location, (await Post(again, "k6", service.ExampleRecord)).Headers.Location);
    }

    [Fact]
    public async Task A_stored_evaluation_is_not_sent_again()
    {
        var posted = await _client.PostRecord(service.ExampleRecord);
        foreach (var path in new[] { $"{posted.Headers.Location}", $"{posted.Headers.Location}?include=all", $"{posted.Headers.Location}/record", "/openapi/v1.json", "/openapi/v1-3.0.json" })
        {
            var read = await _client.GetAsync(path);
            var again = new HttpRequestMessage(HttpMethod.Get, path) { Headers = { IfNoneMatch = { read.Headers.ETag! } } };
            Assert.Equal(HttpStatusCode.NotModified, (await _client.SendAsync(again)).StatusCode);
        }
    }

    [Fact]
    public async Task A_request_that_takes_too_long_is_504()
    {
        using var hasty = service.WithWebHostBuilder(builder => builder.UseSetting("Requests:Seconds", "0.2"));
        var endless = new StreamContent(new NeverEnding()) { Headers = { ContentType = new("application/json") } };

        var problem = await (await hasty.CreateDefaultClient().PostAsync("/v1/evaluations", endless)).Read(HttpStatusCode.GatewayTimeout);

        Assert.Equal("/problems/too-slow", problem["type"].Text());
    }

    [Fact]
    public async Task A_deprecated_route_says_so_in_every_answer()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.UseTestServer();
        await using var app = builder.Build();
        var since = new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);
        app.MapGet("/old", () => "old").Deprecated(new Deprecation(since, since.AddYears(1), "/docs/old"));
        await app.StartAsync();

        var headers = (await app.GetTestClient().GetAsync("/old")).Headers;

        // RFC 9745, section 2.1: a date as a structured field; RFC 8594, section 3: an HTTP date.
        Assert.Equal("@1767225600", Assert.Single(headers.GetValues("Deprecation")));
        Assert.Equal("Fri, 01 Jan 2027 00:00:00 GMT", Assert.Single(headers.GetValues("Sunset")));
        Assert.Equal(["</docs/old>; rel=\"deprecation\"", "</docs/old>; rel=\"sunset\""], headers.GetValues("Link"));
    }

    [Fact]
    public async Task Every_link_of_the_catalogue_leads_somewhere()
    {
        var catalogue = await _client.GetAsync("/.well-known/api-catalog");
        var head = await service.CreateDefaultClient().SendAsync(new(HttpMethod.Head, "/.well-known/api-catalog"));
        Assert.Equal(["</.well-known/api-catalog>; rel=\"api-catalog\""], head.Headers.GetValues("Link"));

        Assert.Equal("application/linkset+json", catalogue.Content.Headers.ContentType!.MediaType);
        var links = JsonNode.Parse(await catalogue.Content.ReadAsStringAsync())!["linkset"]![0]!.AsObject();
        Assert.Equal("http://localhost/v1", links["anchor"].Text());
        foreach (var (relation, targets) in links.Where(link => link.Value is JsonArray))
        {
            Assert.Contains(relation, (string[])["service-desc", "service-doc", "status"]);
            foreach (var target in targets!.AsArray())
            {
                var answer = await _client.GetAsync(target!["href"].Text());
                Assert.True(answer.IsSuccessStatusCode, relation);
                Assert.Equal(target["type"].Text(), answer.Content.Headers.ContentType!.MediaType);
            }
        }
    }

    private static Task<HttpResponseMessage> Post(HttpClient client, string key, byte[] record, string query = "")
    {
        var request = new HttpRequestMessage(HttpMethod.Post, $"/v1/evaluations{query}") { Content = Calls.Json(record) };
        request.Headers.TryAddWithoutValidation("Idempotency-Key", key);
        return client.SendAsync(request);
    }

    private sealed class NeverEnding : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => 0; set => throw new NotSupportedException(); }

        public override void Flush()
        {
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            await Task.Delay(Timeout.Infinite, cancellationToken);
            return 0;
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
