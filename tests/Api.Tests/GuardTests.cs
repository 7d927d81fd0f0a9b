using System.Net;

namespace Api.Tests;

public sealed class GuardTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Theory]
    [InlineData("Forwarded", "for=192.0.2.1")]
    [InlineData("forwarded", "host=localhost")]
    [InlineData("X-Forwarded-For", "127.0.0.1")]
    [InlineData("X-Forwarded-Host", "localhost")]
    [InlineData("X-Forwarded-Proto", "https")]
    [InlineData("X-Forwarded-Anything", "1")]
    [InlineData("X-Original-For", "192.0.2.1")]
    [InlineData("X-Real-IP", "192.0.2.1")]
    [InlineData("Via", "1.1 gateway")]
    public async Task A_forwarded_request_is_refused(string header, string value)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, "/v1/rules");
        Assert.True(request.Headers.TryAddWithoutValidation(header, value));

        var problem = await (await _client.SendAsync(request)).Read(HttpStatusCode.Forbidden);

        Assert.Equal("/problems/forwarded-request", problem["type"].Text());
    }

    [Theory]
    [InlineData("example.org")]
    [InlineData("localhost.example.org")]
    [InlineData("127.0.0.1.example.org:5000")]
    [InlineData("192.0.2.1")]
    [InlineData("0.0.0.0")]
    public async Task A_request_for_another_host_is_refused(string host)
    {
        foreach (var path in new[] { "/v1/rules", "/docs/index.html", "/openapi/v1.json", "/health/live", "/nothing" })
        {
            var problem = await (await _client.SendAsync(Get(path, host))).Read(HttpStatusCode.Forbidden);
            Assert.Equal("/problems/foreign-host", problem["type"].Text());
        }
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("LOCALHOST:5000")]
    [InlineData("127.0.0.1:80")]
    [InlineData("[::1]:5000")]
    public async Task This_machine_by_any_name_is_served(string host) =>
        await (await _client.SendAsync(Get("/v1/rules", host))).Read();

    [Theory]
    [InlineData("/v1/rules")]
    [InlineData("/docs/index.html")]
    [InlineData("/nothing")]
    [InlineData("/v1/evaluations/none")]
    public async Task Every_answer_carries_the_security_headers(string path)
    {
        var headers = (await _client.GetAsync(path)).Headers;

        Assert.Equal("nosniff", Assert.Single(headers.GetValues("X-Content-Type-Options")));
        Assert.Contains("default-src 'none'", Assert.Single(headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", Assert.Single(headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Equal("same-origin", Assert.Single(headers.GetValues("Referrer-Policy")));
    }

    [Theory]
    [InlineData("GET")]
    [InlineData("OPTIONS")]
    public async Task No_page_of_another_origin_may_read_an_answer(string method)
    {
        var request = new HttpRequestMessage(new HttpMethod(method), "/v1/rules") { Headers = { { "Origin", "https://example.org" }, { "Access-Control-Request-Method", "POST" } } };

        var answer = await _client.SendAsync(request);

        Assert.DoesNotContain(answer.Headers, header => header.Key.StartsWith("Access-Control", StringComparison.OrdinalIgnoreCase));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Resource-Policy")));
    }

    private static HttpRequestMessage Get(string path, string host) => new(HttpMethod.Get, path) { Headers = { Host = host } };
}
