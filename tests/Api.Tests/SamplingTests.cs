using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>How many appliances to look at again, which, and what that shows of the others.</summary>
public sealed class SamplingTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    // The sizes and bounds themselves are checked against tables in tests/vectors/inspection.json.
    [Theory]
    [InlineData("""{"population":500,"tolerableSharePercent":2,"confidencePercent":95}""", 129, "If none of 129 drawn by lot is faulty, fewer than 10 of the 500 are faulty, with at least 95 % confidence.")]
    [InlineData("""{"tolerableSharePercent":5,"confidencePercent":95}""", 59, "If none of 59 drawn by lot is faulty, less than 5 % are faulty, with at least 95 % confidence.")]
    [InlineData("""{"population":100,"tolerableCount":10,"confidencePercent":95,"allowedFaults":1}""", 39, "If no more than 1 of 39 drawn by lot are faulty, fewer than 10 of the 100 are faulty, with at least 95 % confidence.")]
    public async Task A_sample_is_sized_and_its_meaning_said(string body, int size, string meaning)
    {
        var answer = await Ask(body);

        Assert.Equal((size, meaning), (answer["sampleSize"]!.GetValue<int>(), answer["meaning"].Text()));
        Assert.Contains("no number of visits shows that a boiler is safe", answer["cautions"]!.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_draw_is_the_same_whatever_the_order_of_the_items_and_anybody_can_repeat_it()
    {
        string[] items = [.. Enumerable.Range(1, 40).Select(number => $"T25-{number:0000}")];
        var first = (await Ask(BodyOf(items)))["draw"]!;
        var second = (await Ask(BodyOf(items.Reverse())))["draw"]!;

        Assert.True(JsonNode.DeepEquals(first, second));
        var repeated = items.OrderBy(item => Convert.ToHexString(HMACSHA256.HashData("week 40"u8, Encoding.UTF8.GetBytes(item))), StringComparer.Ordinal);
        Assert.Equal(repeated.Take(first["items"]!.AsArray().Count), first["items"]!.AsArray().Select(item => item.Text()));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData("week 40"u8)), first["seedPromise"].Text());
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', items) + "\n"))), first["itemsHash"].Text());

        static string BodyOf(IEnumerable<string> items) => new JsonObject
        {
            ["items"] = new JsonArray([.. items.Select(item => JsonValue.Create(item))]),
            ["tolerableSharePercent"] = 10,
            ["confidencePercent"] = 95,
            ["seed"] = "week 40",
        }.ToJsonString();
    }

    [Fact]
    public async Task After_the_visits_the_exact_bound_is_given_and_whether_it_lies_below_what_is_tolerable()
    {
        var clean = (await Ask("""{"population":200,"tolerableCount":17,"confidencePercent":95,"visited":32,"faulty":0}"""))["afterVisits"]!;
        var faulty = (await Ask("""{"population":200,"tolerableCount":17,"confidencePercent":95,"visited":32,"faulty":1}"""))["afterVisits"]!;

        Assert.Equal((16, 8m, true), (clean["atMostFaulty"]!.GetValue<int>(), clean["atMostSharePercent"]!.GetValue<decimal>(), clean["isBelowTolerable"]!.GetValue<bool>()));
        Assert.Equal((26, false), (faulty["atMostFaulty"]!.GetValue<int>(), faulty["isBelowTolerable"]!.GetValue<bool>()));
        Assert.Equal("After 32 visits with 1 faulty, at most 26 of the 200 are faulty, with at least 95 % confidence.", faulty["meaning"].Text());
    }

    [Theory]
    [InlineData("{}", "#/confidencePercent requiredMember", "#/tolerableSharePercent requiredMember")]
    [InlineData("""{"population":1.5,"tolerableCount":0,"confidencePercent":49,"colour":1}""", "#/population wrongType", "#/tolerableCount outOfRange", "#/confidencePercent outOfRange", "#/colour unknownMember")]
    [InlineData("""{"population":10,"items":["a"],"seed":"s","tolerableCount":1,"tolerableSharePercent":5,"confidencePercent":95}""", "#/population oneOnly", "#/tolerableSharePercent oneOnly")]
    [InlineData("""{"items":["a","b","a",""," ",1],"tolerableCount":1,"confidencePercent":95}""", "#/items/3 textLength", "#/items/4 textLength", "#/items/5 wrongType", "#/seed requiredMember", "#/items/2 duplicateItem")]
    [InlineData("""{"items":[],"seed":"s","tolerableCount":1,"confidencePercent":95}""", "#/items requiredMember")]
    [InlineData("""{"tolerableCount":1,"confidencePercent":95,"seedPromise":"x"}""", "#/population requiredMember", "#/seed requiredMember")]
    [InlineData("""{"items":["a"],"seed":"s","seedPromise":"00","tolerableCount":1,"confidencePercent":95}""", "#/seedPromise promiseBroken")]
    [InlineData("""{"population":10,"tolerableCount":1,"confidencePercent":95.0000001,"visited":3}""", "#/confidencePercent notExact", "#/faulty requiredMember")]
    [InlineData("""{"population":10,"tolerableCount":11,"confidencePercent":95,"visited":11,"faulty":12}""", "#/tolerableCount boundsCrossed", "#/visited boundsCrossed", "#/faulty boundsCrossed")]
    [InlineData("""{"population":10,"tolerableCount":2,"allowedFaults":2,"confidencePercent":95,"seed":"\u0001"}""", "#/items requiredMember", "#/seed textCharacters")]
    [InlineData("""{"population":10,"tolerableCount":2,"allowedFaults":2,"confidencePercent":95}""", "#/allowedFaults boundsCrossed")]
    public async Task Every_fault_is_named_at_once(string body, params string[] faults)
    {
        var problem = await (await _client.PostAsync("/v1/sampling", Calls.Json(body))).Read(HttpStatusCode.UnprocessableEntity);

        Assert.Equal(faults.Order(StringComparer.Ordinal), problem["errors"]!.AsArray().Select(error => $"{error!["pointer"].Text()} {error["code"].Text()}").Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("1", "#/items/0 wrongType", 600)]
    [InlineData("\"a\"", "#/items/1 duplicateItem", 601)]
    public async Task Of_very_many_faults_the_first_are_listed_and_the_rest_counted(string item, string first, int items)
    {
        var body = $$"""{"tolerableCount":1,"confidencePercent":95,"seed":"s","items":[{{string.Join(',', Enumerable.Repeat(item, items))}}]}""";
        var errors = (await (await _client.PostAsync("/v1/sampling", Calls.Json(body))).Read(HttpStatusCode.UnprocessableEntity))["errors"]!.AsArray();

        Assert.Equal(first, $"{errors[0]!["pointer"].Text()} {errors[0]!["code"].Text()}");
        Assert.Equal((501, "#", "moreFaults", "Not listed: 100 more."), (errors.Count, errors[^1]!["pointer"].Text(), errors[^1]!["code"].Text(), errors[^1]!["detail"].Text()));
    }

    [Theory]
    [InlineData("""{"population":1,"population":2}""")]
    [InlineData("""{"items":[{"a":1,"a":2}]}""")]
    [InlineData("")]
    public async Task A_body_without_one_meaning_is_400(string body) =>
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.PostAsync("/v1/sampling", Calls.Json(body))).StatusCode);

    private async Task<JsonNode> Ask(string body) => await (await _client.PostAsync("/v1/sampling", Calls.Json(body))).Read();
}
