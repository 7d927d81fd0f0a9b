using System.Net;
using System.Text.Json.Nodes;
using Api.Tests.Contract;
using Microsoft.OpenApi;

namespace Api.Tests;

/// <summary>The published documents are those that the service makes, and its answers are as they say.</summary>
public sealed class OpenApiTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Theory]
    [InlineData("v1", "3.1.2")]
    [InlineData("v1-3.0", "3.0.4")]
    public async Task The_committed_document_is_the_one_that_is_served(string name, string version)
    {
        var served = await _client.GetStringAsync($"/openapi/{name}.json");
        var file = Path.Combine(Repository.Root, "openapi", $"{name}.json");
        if (Environment.GetEnvironmentVariable("REWRITE_OPENAPI") == "1")
            await File.WriteAllTextAsync(file, served);

        Assert.Equal(version, JsonNode.Parse(served)!["openapi"].Text());
        Assert.True(await File.ReadAllTextAsync(file) == served, $"openapi/{name}.json is stale: run tests/rewrite and look at the difference.");
    }

    /// <summary>A process without culture data sorts otherwise than one with them, which tests have.</summary>
    [Theory]
    [InlineData("v1")]
    [InlineData("v1-3.0")]
    public async Task The_running_service_serves_it_byte_by_byte(string name)
    {
        using var running = new RunningService("--urls=http://127.0.0.1:0");
        using var client = await running.Listening();

        Assert.Equal(await File.ReadAllBytesAsync(Path.Combine(Repository.Root, "openapi", $"{name}.json")), await client.GetByteArrayAsync($"/openapi/{name}.json"));
    }

    /// <summary>So that no generated method has a format that its type cannot hold.</summary>
    [Fact]
    public void An_operation_has_one_shape_of_success() => Assert.All(PublishedContract.V1.Operations, operation =>
    {
        var contents = operation.Responses.Where(response => response.Key is ['2', ..]).SelectMany(response => response.Value!["content"]?.AsObject() ?? []).ToList();
        Assert.Single(contents.Select(content => content.Value!["schema"]!.ToJsonString()).Distinct());
        Assert.Single(contents.Select(content => content.Key).Distinct());
        Assert.All(contents, content => Assert.Equal(!content.Key.EndsWith("json", StringComparison.Ordinal) || content.Key == "application/x-ndjson", content.Value!["schema"]!["format"]?.Text() == "binary"));
    });

    [Theory]
    [InlineData("v1")]
    [InlineData("v1-3.0")]
    public async Task A_reader_of_OpenAPI_finds_no_fault_and_every_operation_is_described(string name)
    {
        var read = OpenApiDocument.Parse(await _client.GetStringAsync($"/openapi/{name}.json"), "json");

        Assert.Empty(read.Diagnostic!.Errors);
        var operations = read.Document!.Paths.SelectMany(path => path.Value.Operations!.Values).ToList();
        Assert.All(operations, operation =>
        {
            Assert.False(string.IsNullOrEmpty(operation.OperationId));
            Assert.False(string.IsNullOrEmpty(operation.Summary), operation.OperationId);
            Assert.False(string.IsNullOrEmpty(operation.Description), operation.OperationId);
            Assert.All(operation.Tags!, tag => Assert.False(string.IsNullOrEmpty(tag.Description), tag.Name));
            Assert.All(operation.Parameters ?? [], parameter => Assert.False(string.IsNullOrEmpty(parameter.Description), $"{operation.OperationId} {parameter.Name}"));
            Assert.Contains(operation.Responses!.Keys, status => status.StartsWith('2'));
            Assert.Contains("500", operation.Responses!.Keys);
        });
        Assert.Equal(operations.Count, operations.Select(operation => operation.OperationId).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public async Task The_page_shows_this_document_and_loads_nothing_from_elsewhere()
    {
        var page = await _client.GetStringAsync("/docs/index.html");

        Assert.DoesNotContain("//", page.Replace("<!DOCTYPE", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("/openapi/v1.json", await _client.GetStringAsync("/docs/index.js"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await _client.GetAsync("/docs/swagger-ui-bundle.js")).StatusCode);
    }

    [Fact]
    public async Task The_page_can_be_switched_off()
    {
        using var without = service.WithWebHostBuilder(builder => builder.UseSetting("Docs:Enabled", "false"));
        var client = without.CreateClient();

        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync("/docs/index.html")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/openapi/v1.json")).StatusCode);
    }
}
