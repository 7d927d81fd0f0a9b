namespace Api.Tests;

public sealed class HealthTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    [Fact]
    public async Task Ready_names_the_rules_that_judge()
    {
        var client = service.CreateClient();

        Assert.Equal("live", (await client.GetJson("/health/live"))["status"].Text());
        var ready = await client.GetJson("/health/ready");
        var evaluation = await (await client.PostRecord(service.ExampleRecord, "?store=false")).Read();
        Assert.Equal("ready", ready["status"].Text());
        Assert.Equal(evaluation["ruleSet"]!.ToJsonString(), ready["ruleSet"]!.ToJsonString());
    }
}
