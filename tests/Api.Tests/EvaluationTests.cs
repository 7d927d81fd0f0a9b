using System.Net;
using System.Text.Json;
using Findings;

namespace Api.Tests;

public sealed class EvaluationTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task A_clean_annual_service_passes_and_may_be_closed()
    {
        var response = await _client.PostRecord(service.ExampleRecord);

        var evaluation = await response.Read(HttpStatusCode.Created);
        Assert.Equal($"/v1/evaluations/{evaluation["evaluationId"].Text()}", response.Headers.Location!.ToString());
        Assert.Equal("pass", evaluation["outcome"].Text());
        Assert.True(evaluation["closing"]!["allowed"]!.GetValue<bool>());
        Assert.Equal("HB-0001", evaluation["recordId"].Text());
        Assert.Equal(ServiceInProcess.Now, evaluation["evaluatedAt"]!.GetValue<DateTimeOffset>());
        Assert.Equal(7, Guid.Parse(evaluation["evaluationId"].Text()).Version);
    }

    [Theory]
    [InlineData("")]
    [InlineData("?include=all")]
    [InlineData("?include=problems")]
    [InlineData("?include=passes&store=true")]
    [InlineData("?asOf=2022-09-30&nextChange=true")]
    public async Task Read_back_it_is_the_same_bytes(string query)
    {
        var posted = await _client.PostRecord(service.ExampleRecord, query);

        var read = await _client.GetAsync(posted.Headers.Location);

        Assert.Equal(await posted.Content.ReadAsByteArrayAsync(), await read.Content.ReadAsByteArrayAsync());
        Assert.Equal(posted.Content.Headers.ContentType, read.Content.Headers.ContentType);
        Assert.Equal("no-cache, private", read.Headers.CacheControl!.ToString());
        Assert.Equal("no-store", posted.Headers.CacheControl!.ToString());
    }

    [Theory]
    [InlineData("", false)]
    [InlineData("&nextChange=false", false)]
    [InlineData("&nextChange=true", true)]
    [InlineData("&asOf=2026-09-14", true)]
    public async Task What_the_next_change_would_make_of_it_is_shown_when_asked_for_and_leaves_the_hash(string query, bool isShown)
    {
        var plain = await (await _client.PostRecord(service.ExampleRecord, "?store=false")).Read();
        var evaluation = await (await _client.PostRecord(service.ExampleRecord, $"?store=false{query}")).Read();

        Assert.Equal(isShown ? "2026-10-01" : null, evaluation["nextChange"]?["on"]?.Text());
        Assert.Equal(plain["resultHash"].Text(), evaluation["resultHash"].Text());
    }

    [Fact]
    public async Task A_record_is_judged_by_the_law_of_another_day()
    {
        var before = await (await _client.PostRecord(service.ExampleRecord, "?store=false&include=all&asOf=2022-01-31")).Read();

        Assert.Equal("2022-01-31", before["asOf"].Text());
        Assert.DoesNotContain("co-alarm-scotland", before["findings"].Texts("ruleId"));
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.PostRecord(service.ExampleRecord, "?asOf=31.01.2022")).StatusCode);
    }

    [Fact]
    public async Task An_answer_has_the_one_form_in_which_evaluations_are_stored_and_hashed()
    {
        var text = await (await _client.PostRecord(service.ExampleRecord, "?include=all")).Content.ReadAsStringAsync();

        Assert.Equal(text, JsonSerializer.Serialize(JsonSerializer.Deserialize(text, EvaluationJson.Wire.Evaluation), EvaluationJson.Wire.Evaluation));
    }

    [Fact]
    public async Task The_record_is_kept_as_posted()
    {
        byte[] record = [0xEF, 0xBB, 0xBF, .. " \n"u8, .. service.ExampleRecord, .. "\r\n "u8];
        var posted = await _client.PostRecord(record);

        var read = await _client.GetAsync($"{posted.Headers.Location}/record");

        Assert.Equal(record, await read.Content.ReadAsByteArrayAsync());
        Assert.Equal("application/json", read.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task Not_stored_it_has_no_id_and_says_the_same()
    {
        var stored = await (await _client.PostRecord(service.ExampleRecord)).Read(HttpStatusCode.Created);
        var response = await _client.PostRecord(service.ExampleRecord, "?store=false");

        var passing = await response.Read();
        Assert.Null(passing["evaluationId"]);
        Assert.Null(response.Headers.Location);
        Assert.Equal(stored["resultHash"].Text(), passing["resultHash"].Text());
    }

    [Fact]
    public async Task Include_says_how_much_is_shown_and_nothing_else()
    {
        var posted = await _client.PostRecord(Worn(service.ExampleRecord));
        var standard = await posted.Read(HttpStatusCode.Created);
        var passes = await _client.GetJson($"{posted.Headers.Location}?include=passes");
        var all = await _client.GetJson($"{posted.Headers.Location}?include=all");
        var problems = await _client.GetJson($"{posted.Headers.Location}?include=problems");

        Assert.Equal("advisory", standard["outcome"].Text());
        Assert.Contains("notApplicable", all["findings"].Texts("outcome"));
        Assert.All(all["findings"]!.AsArray(), finding => Assert.NotNull(finding!["documentation"]));
        Assert.DoesNotContain("notApplicable", passes["findings"].Texts("outcome"));
        Assert.Contains("pass", passes["findings"].Texts("outcome"));
        Assert.All(passes["findings"]!.AsArray().Where(finding => finding!["outcome"].Text() == "pass"), finding => Assert.Null(finding!["message"]));
        Assert.NotEmpty(problems["findings"]!.AsArray());
        Assert.DoesNotContain("pass", problems["findings"].Texts("outcome"));
        Assert.Equal(standard.ToJsonString(), problems.ToJsonString());

        foreach (var shown in new[] { all, passes })
        {
            foreach (var member in new[] { "outcome", "counts", "inputHash", "resultHash" })
                Assert.Equal(standard[member]!.ToJsonString(), shown[member]!.ToJsonString());
        }
    }

    [Fact]
    public async Task A_half_filled_record_is_told_what_is_missing()
    {
        const string Early = """{"recordId":"r","jobType":"annualService","jurisdiction":"GB-ENG","finishedAt":"2026-09-14T10:25:00+01:00","appliance":{"fuel":"naturalGas"}}""";

        var evaluation = await (await _client.PostRecord(Early)).Read(HttpStatusCode.Created);

        Assert.NotEqual("pass", evaluation["outcome"].Text());
        Assert.False(evaluation["closing"]!["allowed"]!.GetValue<bool>());
        Assert.Contains("/combustion/readings", evaluation["missing"].Texts("pointer"));
    }

    [Fact]
    public async Task A_corrected_record_supersedes_an_evaluation_once()
    {
        var first = await _client.PostRecord(service.ExampleRecord);
        var corrected = service.ExampleRecord.With(record => record["supersedes"] = first.Headers.Location!.ToString().Split('/')[^1]);

        var second = await _client.PostRecord(corrected);

        Assert.Equal(HttpStatusCode.Created, second.StatusCode);
        var read = await _client.GetAsync(first.Headers.Location);
        Assert.Equal($"<{second.Headers.Location}>; rel=\"successor-version\"", Assert.Single(read.Headers.GetValues("Link")));
        Assert.Equal(await first.Content.ReadAsByteArrayAsync(), await read.Content.ReadAsByteArrayAsync());

        foreach (var query in new[] { "", "?store=false" })
        {
            var problem = await (await _client.PostRecord(corrected, query)).Read(HttpStatusCode.UnprocessableEntity);
            Assert.Equal(["#/supersedes"], problem["errors"].Texts("pointer"));
        }
    }

    [Theory]
    [InlineData("supersedes", "#/supersedes")]
    [InlineData("appliance/profileId", "#/appliance/profileId")]
    public async Task What_a_record_refers_to_must_be_there(string member, string pointer)
    {
        var record = service.ExampleRecord.With(node =>
        {
            var parts = member.Split('/');
            (parts.Length == 1 ? node : node[parts[0]])![parts[^1]] = "nowhere";
        });

        var problem = await (await _client.PostRecord(record)).Read(HttpStatusCode.UnprocessableEntity);

        Assert.Equal([pointer], problem["errors"].Texts("pointer"));
        Assert.Equal(["unknownReference"], problem["errors"].Texts("code"));
    }

    [Theory]
    [InlineData("/v1/evaluations/01990000-0000-7000-8000-000000000000")]
    [InlineData("/v1/evaluations/x")]
    [InlineData("/v1/evaluations/x/record")]
    public async Task An_unknown_id_is_not_found(string path)
    {
        var problem = await (await _client.GetAsync(path)).Read(HttpStatusCode.NotFound);

        Assert.Equal("/problems/not-found", problem["type"].Text());
    }

    /// <summary>Above the maker's limit, below the ceiling.</summary>
    private static byte[] Worn(byte[] record) => record.With(node => node["disturbedJoints"]![0]!["renewed"] = false);
}
