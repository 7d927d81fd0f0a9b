using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
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
        var served = (await _client.GetStringAsync($"/openapi/{name}.json")) + "\n";
        var file = Path.Combine(Root(), "openapi", $"{name}.json");
        if (Environment.GetEnvironmentVariable("REWRITE_OPENAPI") == "1")
            await File.WriteAllTextAsync(file, served);

        Assert.Equal(version, JsonNode.Parse(served)!["openapi"].Text());
        Assert.True(await File.ReadAllTextAsync(file) == served, $"openapi/{name}.json is stale: run these tests with REWRITE_OPENAPI=1 and look at the difference.");
    }

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
            Assert.NotEmpty(operation.Tags!);
            Assert.All(operation.Parameters ?? [], parameter => Assert.False(string.IsNullOrEmpty(parameter.Description), $"{operation.OperationId} {parameter.Name}"));
            Assert.Contains(operation.Responses!.Keys, status => status.StartsWith('2'));
            Assert.Contains("500", operation.Responses!.Keys);
        });
        Assert.Equal(operations.Count, operations.Select(operation => operation.OperationId).Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData("/v1/questions", "QuestionList")]
    [InlineData("/v1/rules", "RuleViewPage")]
    [InlineData("/v1/rules/combustion-ratio", "RuleView")]
    [InlineData("/v1/rule-sets", "RuleSetSummaryPage")]
    [InlineData("/v1/limits?limit=500", "LimitDefinitionPage")]
    [InlineData("/v1/references", "ReferenceDocumentPage")]
    [InlineData("/v1/calculations?limit=500", "CalculationViewPage")]
    [InlineData("/health/ready", "Health")]
    public async Task An_answer_fits_its_schema(string path, string schema) => await DemandFit(await _client.GetJson(path), schema);

    [Fact]
    public async Task Evaluations_profiles_and_problems_fit_their_schemas()
    {
        var half = service.ExampleRecord.With(record => record.AsObject().Remove("combustion"));
        var unsafeRecord = service.ExampleRecord.With(record => record["combustion"]!["readings"]![0]!["coPpm"] = 2000);
        foreach (var record in new[] { service.ExampleRecord, half, unsafeRecord })
        {
            await DemandFit(JsonNode.Parse(record)!, "ServiceRecord");
            await DemandFit(await (await _client.PostRecord(record, "?include=all")).Read(HttpStatusCode.Created), "Evaluation");
        }

        await DemandFit(await (await _client.PostRecord("{}")).Read(HttpStatusCode.UnprocessableEntity), "Problem");
        await DemandFit(await (await _client.GetAsync("/v1/rules?x=1")).Read(HttpStatusCode.BadRequest), "Problem");
        await DemandFit(await (await _client.PutAsync("/v1/appliance-profiles/p", Calls.Json("""{"coPpmMax":300}"""))).Read(HttpStatusCode.Created), "ApplianceProfile");
    }

    [Theory]
    [InlineData("/combustion/readings/0/co2Percent", "101")]
    [InlineData("/combustion/readings/0/coPpm", "\"96\"")]
    [InlineData("/appliance/fuel", "\"NaturalGas\"")]
    [InlineData("/recordId", "\"\"")]
    [InlineData("/colour", "1")]
    [InlineData("/burner/colour", "1")]
    public async Task The_schema_of_the_record_refuses_what_the_service_refuses(string pointer, string value)
    {
        var record = service.ExampleRecord.With(node =>
        {
            var parts = pointer.Split('/')[1..];
            var parent = parts[..^1].Aggregate(node, (at, part) => (at is JsonArray ? at[int.Parse(part, System.Globalization.CultureInfo.InvariantCulture)] : at[part])!);
            parent[parts[^1]] = JsonNode.Parse(value);
        });

        Assert.False((await Fit(JsonNode.Parse(record)!, "ServiceRecord")).IsValid);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await _client.PostRecord(record)).StatusCode);
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

    private async Task DemandFit(JsonNode instance, string schema)
    {
        var result = await Fit(instance, schema);
        Assert.True(result.IsValid, JsonSerializer.Serialize(result));
    }

    private async Task<EvaluationResults> Fit(JsonNode instance, string schema)
    {
        var components = (await _client.GetJson("/openapi/v1.json"))["components"]!["schemas"]!;
        WithoutExtensions(components);
        var text = $$"""{"$ref":"#/$defs/{{schema}}","$defs":{{components.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal)}}}""";
        return JsonSchema.FromText(text).Evaluate(JsonSerializer.SerializeToElement(instance), new EvaluationOptions { OutputFormat = OutputFormat.List });
    }

    private static void WithoutExtensions(JsonNode? node)
    {
        if (node is JsonObject members)
        {
            foreach (var name in members.Select(member => member.Key).Where(name => name.StartsWith("x-", StringComparison.Ordinal)).ToList())
                members.Remove(name);
            foreach (var (_, value) in members)
                WithoutExtensions(value);
        }
        else if (node is JsonArray items)
        {
            foreach (var item in items)
                WithoutExtensions(item);
        }
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "ComplianceApi.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
