using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Kernel;
using Kernel.Catalogues;
using Microsoft.Extensions.DependencyInjection;
using Visits.Judging;

namespace Api.Tests;

public sealed class CatalogueTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    private RuleCatalogue Catalogue => service.Services.GetRequiredService<ComplianceEngine>().Catalogue;

    [Fact]
    public async Task Every_rule_is_listed_and_has_a_page_with_its_cases()
    {
        var list = await All("/v1/rules");

        Assert.Equal(Catalogue.All.Select(rule => rule.Info.Id), list.Select(rule => rule["id"].Text()));
        foreach (var (rule, cases) in Catalogue.Cases)
        {
            var page = await _client.GetJson($"/v1/rules/{rule.Info.Id}");
            Assert.Equal(rule.Info.Title, page["title"].Text());
            Assert.Equal(cases.Select(one => one.Name), page["cases"].Texts("name"));
        }
    }

    [Fact]
    public async Task A_rule_of_the_duties_says_what_it_calls_for_and_has_a_page_with_its_cases()
    {
        foreach (var (rule, cases) in Catalogue.DutyCases)
        {
            var page = await _client.GetJson($"/v1/rules/{rule.Info.Id}");
            Assert.Equal("duties", page["set"].Text());
            Assert.Equal(cases.Select(one => one.Name), page["dutyCases"].Texts("name"));
            Assert.Equal(rule is DutyCallRule, page["calls"] is not null);
        }

        var circuit = (await _client.GetJson("/v1/rules/combustion-circuit"))["calls"]!.AsArray();
        Assert.Contains(circuit, call => call!["weight"].Text() == "must" && call["where"]?.Text() == "the boiler has a fan, or may have one" && call["parts"]!.AsArray().Single().Text() == "proveCombustionCircuit/case");
        Assert.All((await _client.GetJson("/v1/rules/not-running"))["calls"]!.AsArray(), call => Assert.Null(call!["weight"]));
    }

    [Theory]
    [InlineData("duties", "annual-service")]
    [InlineData("demands", "combustion-ratio")]
    [InlineData("situation", "danger-stands")]
    [InlineData("situation", "unsafe-left-in-use")]
    public async Task Rules_are_filtered_by_set(string set, string one)
    {
        var rules = await All($"/v1/rules?set={set}&limit=500");

        Assert.All(rules, rule => Assert.Equal(set, rule["set"].Text()));
        Assert.Contains(one, rules.Select(rule => rule["id"].Text()));
        var counts = Assert.Single(await All("/v1/rule-sets"))["sets"]!.AsArray();
        Assert.Equal(["duties", "demands", "situation"], counts.Select(count => count!["set"].Text()));
        Assert.Equal(rules.Count, counts.Single(count => count!["set"].Text() == set)!["rules"]!.GetValue<int>());
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync("/v1/rules?set=duty")).StatusCode);
    }

    [Fact]
    public async Task A_rule_shows_the_limits_that_decide_and_no_makers_own()
    {
        var rule = await _client.GetJson("/v1/rules/combustion-ratio");

        Assert.Contains(rule["limits"]!.AsArray(), limit => limit!["max"]!.GetValue<decimal>() == 0.008m);
        Assert.DoesNotContain("maker", rule["limits"].Texts("origin"));
    }

    [Fact]
    public async Task A_finding_documents_itself_by_a_path_that_is_served()
    {
        var evaluation = await (await _client.PostRecord(service.ExampleRecord, "?include=all&store=false")).Read();

        foreach (var path in evaluation["findings"].Texts("documentation").Distinct())
            await _client.GetJson(path);
    }

    [Fact]
    public async Task Rules_are_filtered_by_topic()
    {
        var joints = await All("/v1/rules?topic=joints");

        Assert.NotEmpty(joints);
        Assert.All(joints, rule => Assert.Equal("joints", rule["topic"].Text()));
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync("/v1/rules?topic=joint")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync("/v1/rules/none")).StatusCode);
    }

    [Fact]
    public async Task Following_next_gives_every_item_once()
    {
        var whole = await All("/v1/limits?limit=500");
        var parts = await All("/v1/limits?limit=7");

        Assert.Equal(Catalogue.Limits.Definitions.Count, whole.Count);
        Assert.Equal(whole.Select(limit => limit.ToJsonString()), parts.Select(limit => limit.ToJsonString()));
    }

    [Theory]
    [InlineData("limit=0")]
    [InlineData("limit=501")]
    [InlineData("limit=+5")]
    [InlineData("next=0")]
    [InlineData("next=LTE")]
    [InlineData("date=2026-9-14")]
    [InlineData("fuel=NaturalGas")]
    [InlineData("jurisdiction=GB-NIR")]
    public async Task A_wrong_parameter_is_refused(string query) =>
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync($"/v1/limits?{query}")).StatusCode);

    [Fact]
    public async Task Limits_are_filtered_by_where_and_when_they_apply()
    {
        var shown = await All("/v1/limits?date=2026-09-14&fuel=propane&jurisdiction=GB-SCT&limit=500");

        var expected = Catalogue.Limits.Definitions
            .Where(limit => limit.AppliesTo("propane", "GB-SCT", new DateOnly(2026, 9, 14)));
        Assert.Equal(expected.Select(limit => limit.Id), shown.Select(limit => limit["id"].Text()));
        Assert.True(shown.Count < Catalogue.Limits.Definitions.Count);
    }

    [Fact]
    public async Task Rule_sets_and_references_are_those_that_judge()
    {
        var set = Assert.Single(await All("/v1/rule-sets"));
        var evaluation = await (await _client.PostRecord(service.ExampleRecord, "?store=false")).Read();

        foreach (var name in new[] { "id", "version", "lawHash", "codeHash" })
            Assert.Equal(evaluation["ruleSet"]![name].Text(), set[name].Text());
        Assert.NotEqual(evaluation["engineVersion"].Text(), set["version"].Text());
        Assert.Equal("2026-11-30", set["countsFrom"].Text());
        Assert.Equal(Catalogue.All.Count, set["rules"]!.GetValue<int>());
        Assert.Equal(Catalogue.References.Documents.Select(document => document.Id), (await All("/v1/references")).Select(document => document["id"].Text()));
    }

    /// <summary>Written from the description of /v1/rule-sets alone.</summary>
    [Fact]
    public async Task Anybody_can_work_out_the_law_hash_from_what_is_served()
    {
        var set = Assert.Single(await All("/v1/rule-sets"));
        var law = new JsonObject
        {
            ["ruleSet"] = new JsonObject(new[] { "id", "version", "countsFrom", "knownFrom", "reviewedOn" }.Select(name => KeyValuePair.Create(name, set[name]?.DeepClone()))),
        };
        foreach (var list in new[] { "rules", "limits", "references", "duties" })
            law[list] = new JsonArray([.. (await All($"/v1/{list}")).Select(item => item.DeepClone())]);
        law["reasons"] = await _client.GetJson("/v1/reasons");
        foreach (var reference in law["rules"]!.AsArray().SelectMany(rule => rule!["references"]!.AsArray()))
        {
            foreach (var name in reference!.AsObject().Select(member => member.Key).Except(["id", "clause"]).ToList())
                reference.AsObject().Remove(name);
        }

        Assert.Equal(set["lawHash"].Text(), Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Written(law)))));

        static string Written(JsonNode node) => node switch
        {
            JsonObject members => "{" + string.Join(',', members.OrderBy(member => member.Key, StringComparer.Ordinal).Select(member => $"\"{member.Key}\":{Written(member.Value!)}")) + "}",
            JsonArray items => "[" + string.Join(',', items.Select(item => Written(item!)).Order(StringComparer.Ordinal)) + "]",
            _ when node.GetValueKind() == JsonValueKind.Number => node.GetValue<decimal>().ToString("0.##########", CultureInfo.InvariantCulture),
            _ when node.GetValueKind() == JsonValueKind.String => "\"" + node.Text().Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"",
            _ => node.ToJsonString(),
        };
    }

    private async Task<List<JsonNode>> All(string path)
    {
        var items = new List<JsonNode>();
        for (string? next = null; ;)
        {
            var page = await _client.GetJson(next is null ? path : $"{path}{(path.Contains('?', StringComparison.Ordinal) ? '&' : '?')}next={next}");
            items.AddRange(page["items"]!.AsArray().Select(item => item!));
            next = page["next"]?.GetValue<string>();
            if (next is null)
            {
                Assert.Equal(page["total"]!.GetValue<int>(), items.Count);
                return items;
            }
        }
    }
}
