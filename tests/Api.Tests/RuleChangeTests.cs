using System.Net;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>What a change of rules would do, asked over HTTP. What is found is tested with the store, in Jobs.Tests.</summary>
public sealed class RuleChangeTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    public const string Path = "/v1/rule-changes/preview";

    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task A_tighter_limit_is_previewed_over_the_archive_and_each_change_leads_to_its_evaluation()
    {
        foreach (var coldFill in new[] { 1.0m, 1.2m, 1.05m })
        {
            var record = service.ExampleRecord.With(record => (record["water"]!["coldFillBar"], record["recordId"]) = (coldFill, $"cold fill {coldFill}"));
            await (await _client.PostRecord(record)).Read(HttpStatusCode.Created);
        }

        var accepted = await _client.PostAsync(Path, Calls.Json(Body(Line(1.1m))));
        Assert.Equal(HttpStatusCode.Accepted, accepted.StatusCode);
        var location = accepted.Headers.Location!;
        var status = await _client.Completed(location);

        Assert.Equal(("completed", 1), (status["state"].Text(), status["overrides"]!.GetValue<int>()));
        Assert.Equal(2, status["summary"]!["findings"]!["new"]!.GetValue<int>());
        var first = await _client.GetJson($"{location}/changes?limit=1&change=new&rule=cold-fill-pressure");
        var second = await _client.GetJson($"{location}/changes?limit=1&change=new&rule=cold-fill-pressure&next={first["next"].Text()}");
        Assert.Equal(2, first["total"]!.GetValue<int>());
        Assert.Null(second["next"]);
        foreach (var row in new[] { first["items"]![0]!, second["items"]![0]! })
        {
            Assert.Equal(("new", "", "advisory"), (row["change"].Text(), row["outcomeBefore"].Text(), row["outcome"].Text()));
            var record = await _client.GetJson($"{row["evaluation"].Text()}/record");
            Assert.True(record["water"]!["coldFillBar"]!.GetValue<decimal>() < 1.1m);
        }

        var lines = (await _client.GetStringAsync($"{location}/changes.ndjson")).TrimEnd('\n').Split('\n');
        var csv = (await _client.GetStringAsync($"{location}/changes.csv")).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal((2, 3), (lines.Length, csv.Length));
        Assert.Contains(",new,/v1/evaluations/", csv[1], StringComparison.Ordinal);
        Assert.Equal(location.ToString().Split('/')[^1], (await _client.GetJson($"{Path}?limit=1"))["items"]![0]!["previewId"].Text());
        Assert.Equal("completed", (await (await _client.DeleteAsync(location)).Read())["state"].Text());
    }

    [Fact]
    public async Task A_candidate_that_does_not_fit_is_refused_with_every_fault()
    {
        var body = Body(Line(0.7m), new JsonObject { ["id"] = "no-such-limit" }, Line(1.1m, line => line["unit"] = "mbar"));
        var problem = await (await _client.PostAsync(Path, Calls.Json(body))).Read(HttpStatusCode.UnprocessableEntity);

        Assert.Equal(["#/overrides/0", "#/overrides/1", "#/overrides/2"], problem["errors"].Texts("pointer").Distinct());
        Assert.All(problem["errors"].Texts("code"), code => Assert.Equal("unfitLimit", code));
        Assert.Contains("does not say \"loosens\": true", problem["errors"]![0]!["detail"].Text(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{}", "#/overrides requiredMember")]
    [InlineData("""{"asOf":"2026-02-30","from":1,"to":"1899-12-31"}""", "#/asOf notADate", "#/from wrongType", "#/to notADate")]
    [InlineData("""{"asOf":"2026-10-12","from":"2026-02-02","to":"2026-02-01"}""", "#/to outOfOrder")]
    [InlineData("""{"overrides":{}}""", "#/overrides wrongType")]
    [InlineData("""{"overrides":[{"id":"cold-fill"},null,1]}""", "#/overrides/0 unfitLimit", "#/overrides/1 unfitLimit", "#/overrides/2 unfitLimit")]
    [InlineData("""{"asOf":"2026-10-12","nope":1,"asOf":"x"}""", "#/asOf duplicateMember", "#/nope unknownMember", "#/asOf notADate")]
    public async Task Faults_of_the_body_are_named(string body, params string[] faults)
    {
        var status = faults[0].EndsWith("duplicateMember", StringComparison.Ordinal) ? HttpStatusCode.BadRequest : HttpStatusCode.UnprocessableEntity;
        var problem = await (await _client.PostAsync(Path, Calls.Json(body))).Read(status);

        Assert.Equal(faults, problem["errors"]!.AsArray().Select(error => $"{error!["pointer"].Text()} {error["code"].Text()}").Distinct());
    }

    [Fact]
    public async Task Of_a_limit_that_cannot_be_read_every_member_at_fault_is_named_in_the_words_of_the_file()
    {
        var line = """{"id":"cold-fill","min":"1","min":1,"max":null,"bad":1,"\ud800":1,"source":"\ud800","origin":"deployer","verified":1,"who":"a","why":"b"}""";
        var problem = await (await _client.PostAsync(Path, Calls.Json($$"""{"overrides":[{{line}}]}"""))).Read(HttpStatusCode.BadRequest);
        Assert.Equal(["#/overrides/0/min"], problem["errors"]!.AsArray().Where(error => error!["code"].Text() == "duplicateMember").Select(error => error!["pointer"].Text()));

        problem = await (await _client.PostAsync(Path, Calls.Json($$"""{"overrides":[{{line.Replace("\"min\":1,", "", StringComparison.Ordinal)}}]}"""))).Read(HttpStatusCode.UnprocessableEntity);
        var said = string.Join('\n', problem["errors"].Texts("detail"));
        foreach (var member in (string[])["'bad', which no limit has", "not say 'what'", "not say 'unit'", "not say 'resolution'", "says 'min' in", "says 'source' in", "says 'verified' in"])
            Assert.Contains(member, said, StringComparison.Ordinal);
        Assert.DoesNotContain("'max'", said, StringComparison.Ordinal);
        Assert.DoesNotContain("LimitDefinition", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/changes")]
    public async Task What_is_not_there_is_not_found(string below) =>
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync($"{Path}/x{below}")).StatusCode);

    public static string Body(params JsonObject[] lines) => new JsonObject { ["overrides"] = new JsonArray([.. lines]) }.ToJsonString();

    public static JsonObject Line(decimal min, Action<JsonObject>? change = null)
    {
        var line = new JsonObject
        {
            ["id"] = "cold-fill",
            ["what"] = "cold fill",
            ["min"] = min,
            ["max"] = 1.5m,
            ["unit"] = "bar",
            ["resolution"] = 0.1m,
            ["origin"] = "deployer",
            ["source"] = "house rule 7",
            ["verified"] = true,
            ["who"] = "the office",
            ["why"] = "made up for a test",
        };
        change?.Invoke(line);
        return line;
    }
}
