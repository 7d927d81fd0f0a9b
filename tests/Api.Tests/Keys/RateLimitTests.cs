using System.Net;
using System.Net.Http.Headers;
using Api.Tests.Contract;
using Jobs.Summary;
using Storage;
using Storage.Keys;

namespace Api.Tests.Keys;

public sealed class RateLimitTests(ServiceWithKeys service) : IClassFixture<ServiceWithKeys>
{
    /// <summary>Headers by draft-ietf-httpapi-ratelimit-headers-11: quota and window in RateLimit-Policy, what is left in RateLimit.</summary>
    [Fact]
    public async Task Who_asks_too_often_is_told_to_wait_and_nobody_else_is()
    {
        var (one, other) = (await service.NewKey("a", KeyScope.Read), await service.NewKey("a", KeyScope.Read));
        await using var strict = service.Inner.WithWebHostBuilder(builder => builder.UseSetting("Limits:RequestsPerMinute", "3"));
        var answers = new List<HttpResponseMessage>();
        for (var i = 0; i < 8; i++)
            answers.Add(await Get(one));

        Assert.Equal("\"requests\";q=3;w=60", Assert.Single(answers[0].Headers.GetValues("RateLimit-Policy")));
        Assert.Equal("\"requests\";r=2;t=1", Assert.Single(answers[0].Headers.GetValues("RateLimit")));
        Assert.Equal(HttpStatusCode.OK, answers[0].StatusCode);
        var refused = answers.First(answer => answer.StatusCode == HttpStatusCode.TooManyRequests);
        Assert.Equal("/problems/too-many-requests", (await refused.Read(HttpStatusCode.TooManyRequests))["type"].Text());
        Assert.Equal(TimeSpan.FromSeconds(1), refused.Headers.RetryAfter!.Delta);
        Assert.Equal(HttpStatusCode.OK, (await Get(other)).StatusCode);

        // Guesses are counted by where they come from.
        var guesses = new List<HttpStatusCode>();
        for (var i = 0; i < 8; i++)
            guesses.Add((await Get("000000000000.guess")).StatusCode);
        Assert.Equal([HttpStatusCode.Unauthorized, HttpStatusCode.TooManyRequests], guesses.Distinct());

        Task<HttpResponseMessage> Get(string key)
        {
            var client = strict.CreateDefaultClient(new ContractHandler());
            client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", key);
            return client.GetAsync("/v1/audits");
        }
    }

    [Fact]
    public async Task Where_no_key_is_asked_for_nothing_is_counted()
    {
        using var open = new ServiceInProcess();

        Assert.False((await open.CreateClient().GetAsync("/v1/rules")).Headers.Contains("RateLimit"));
    }
}
