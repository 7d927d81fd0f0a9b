using System.Net;

namespace Api.Tests;

/// <summary>What is worth a look, over HTTP. What is found is tested with simulated months, in Jobs.Tests.</summary>
public sealed class LookTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task Two_visits_with_one_analyser_at_the_same_time_are_worth_a_look()
    {
        foreach (var home in new[] { "one home", "another home" })
        {
            await (await _client.PostRecord(service.ExampleRecord.With(record =>
            {
                record["premises"]!["reference"] = home;
                record["appliance"]!["serialNumber"] = home;
            }))).Read(HttpStatusCode.Created);
        }

        var report = await _client.GetJson("/v1/worth-a-look?from=2026-09-14&to=2026-09-14&falseDiscoveryPercent=1");

        Assert.Equal((2, 0.01m), (report["records"]!.GetValue<int>(), report["falseDiscoveryRate"]!.GetValue<decimal>()));
        var item = Assert.Single(report["items"]!["rows"]!.AsArray())!;
        Assert.Equal("analyserInTwoPlaces", item["kind"].Text());
        Assert.Contains("no accusation", report["cautions"]![0].Text(), StringComparison.Ordinal);
        foreach (var record in item["records"]!.AsArray())
            Assert.Equal(HttpStatusCode.OK, (await _client.GetAsync(record!["evaluation"].Text())).StatusCode);
        Assert.Equal(0, (await _client.GetJson("/v1/worth-a-look?to=2026-09-13"))["records"]!.GetValue<int>());
    }

    [Theory]
    [InlineData("from=2026-09-15&to=2026-09-14")]
    [InlineData("from=2025-09-13&to=2026-09-14")]
    [InlineData("from=yesterday")]
    [InlineData("falseDiscoveryPercent=0")]
    public async Task What_is_no_period_is_refused(string query) =>
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync($"/v1/worth-a-look?{query}")).StatusCode);
}
