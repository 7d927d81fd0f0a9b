using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using ComplianceApi.Api.Requests;
using ComplianceApi.Problems;
using Jobs.Summary;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Storage;

namespace Api.Tests;

public sealed class ProblemTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task An_empty_object_is_told_every_required_member()
    {
        var problem = await Refused(_client.PostRecord("{}"), 422, "invalid-body");

        Assert.Equal(["#/recordId", "#/jobType", "#/jurisdiction", "#/finishedAt", "#/appliance", "#/appliance/fuel"], problem["errors"].Texts("pointer"));
        Assert.All(problem["errors"].Texts("code"), code => Assert.Equal("requiredMember", code));
    }

    [Fact]
    public async Task Every_fault_of_a_body_is_named_at_once()
    {
        var record = service.ExampleRecord.With(node =>
        {
            node["jobType"] = "AnnualService";
            node["combustion"]!["readings"]![0]!["co2Percent"] = 101;
            node["combustion"]!["readings"]![1]!["coPmm"] = 3;
            node["finishedAt"] = "2026-09-14T10:25:00";
        });

        var problem = await Refused(_client.PostRecord(record), 422, "invalid-body");

        Assert.Equal(
            [("#/jobType", "unknownValue"), ("#/finishedAt", "notADateTime"), ("#/combustion/readings/0/co2Percent", "outOfRange"), ("#/combustion/readings/1/coPmm", "unknownMember")],
            problem["errors"]!.AsArray().Select(error => (error!["pointer"].Text(), error["code"].Text())));
    }

    [Theory]
    [InlineData("", "emptyBody")]
    [InlineData("{\"recordId\":", "notJson")]
    [InlineData("{\"recordId\":\"a\",\"recordId\":\"b\"}", "duplicateMember")]
    [InlineData("[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]", "tooDeep")]
    public async Task What_cannot_be_read_is_400(string body, string code)
    {
        var problem = await Refused(_client.PostRecord(body), 400, "unreadable-body");

        Assert.Contains(code, problem["errors"].Texts("code"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("text/plain")]
    [InlineData("application/xml")]
    [InlineData("application/json; charset=iso-8859-1")]
    public async Task Another_media_type_is_415(string? mediaType)
    {
        var content = new ByteArrayContent("{}"u8.ToArray());
        content.Headers.ContentType = mediaType is null ? null : MediaTypeHeaderValue.Parse(mediaType);

        await Refused(_client.PostAsync("/v1/evaluations", content), 415, "unsupported-media-type");
    }

    [Fact]
    public async Task A_body_that_is_packed_otherwise_than_with_gzip_is_415()
    {
        var content = Calls.Json("{}");
        content.Headers.ContentEncoding.Add("br");
        var response = await _client.PostAsync("/v1/evaluations", content);

        var problem = await Refused(Task.FromResult(response), 415, "unsupported-media-type");
        Assert.Equal("Expected Content-Encoding gzip or identity.", problem["detail"].Text());
        Assert.Equal(["gzip, identity"], response.Headers.GetValues("Accept-Encoding"));
    }

    [Theory]
    [InlineData(0, 201)]
    [InlineData(1, 413)]
    public async Task A_body_of_more_than_one_mebibyte_is_413(int beyond, int status)
    {
        byte[] record = [.. service.ExampleRecord, .. Enumerable.Repeat((byte)' ', JsonBody.MaxBytes - service.ExampleRecord.Length + beyond)];

        var response = await _client.PostRecord(record);

        Assert.Equal(status, (int)response.StatusCode);
        if (beyond > 0)
            await Refused(Task.FromResult(response), 413, "body-too-large");
    }

    [Theory]
    [InlineData("/v1/evaluations?include=everything", "include", "unknownValue")]
    [InlineData("/v1/evaluations?include=All", "include", "unknownValue")]
    [InlineData("/v1/evaluations?store=", "store", "unknownValue")]
    [InlineData("/v1/evaluations?store=0", "store", "unknownValue")]
    [InlineData("/v1/evaluations?store=false&store=false", "store", "duplicateParameter")]
    [InlineData("/v1/evaluations?Store=false", "Store", "unknownParameter")]
    [InlineData("/v1/evaluations?stroe=false", "stroe", "unknownParameter")]
    public async Task A_mistyped_parameter_is_never_ignored(string path, string parameter, string code)
    {
        var problem = await Refused(_client.PostAsync(path, Calls.Json(service.ExampleRecord)), 400, "invalid-parameter");

        Assert.Equal((parameter, code), (problem["errors"]![0]!["parameter"].Text(), problem["errors"]![0]!["code"].Text()));
    }

    [Theory]
    [InlineData("/v1/audits?next=garbage")]
    [InlineData("/v1/rule-changes/preview?next=garbage")]
    [InlineData("/v1/rule-changes/preview/x/changes?month=2026-13")]
    [InlineData("/v1/worth-a-look?from=2026-09-01&to=9999-12-31")]
    public async Task A_value_that_means_nothing_is_refused(string path)
    {
        var problem = await Refused(_client.GetAsync(path), 400, "invalid-parameter");

        Assert.Equal(["unknownValue"], problem["errors"].Texts("code"));
    }

    [Theory]
    [InlineData("finishedAt", "9999-12-31T23:59:59+00:00")]
    [InlineData("finishedAt", "0001-01-01T00:00:00+00:00")]
    public async Task A_moment_at_the_end_of_the_calendar_is_a_fault_and_no_failure(string member, string moment) =>
        await Refused(_client.PostRecord(service.ExampleRecord.With(node => node[member] = moment)), 422, "invalid-body");

    [Fact]
    public async Task A_metered_volume_that_no_meter_shows_gives_no_figure_and_no_failure()
    {
        var record = service.ExampleRecord.With(node =>
        {
            var rate = node["gasSupply"]!["rate"]!.AsObject();
            rate.Remove("volumeM3");
            rate["volumeFt3"] = 1e-28m;
        });
        var evaluation = await (await _client.PostRecord(record, "?store=false")).Read();
        Assert.DoesNotContain("gasRateFromFt3", evaluation["figures"].Texts("name"));

        await Refused(_client.PostAsync("/v1/calculations/gasRateFromFt3", Calls.Json("""{"volumeFt3":1e-28,"seconds":20}""")), 422, "invalid-body");
    }

    [Fact]
    public async Task Unknown_paths_and_methods_have_the_same_shape()
    {
        await Refused(_client.GetAsync("/v2/nothing"), 404, "not-found");
        var response = await _client.DeleteAsync("/v1/evaluations/x");
        await Refused(Task.FromResult(response), 405, "method-not-allowed");
        Assert.Equal(["GET", "HEAD"], response.Content.Headers.Allow);
    }

    [Theory]
    [InlineData("/v1/evaluations?colour=blue")]
    [InlineData("/v2/nothing")]
    public async Task Every_problem_says_what_to_do(string path)
    {
        var problem = JsonNode.Parse(await (await _client.PostAsync(path, Calls.Json("{}"))).Content.ReadAsStringAsync())!;

        Assert.Equal(ProblemKind.ByName[problem["type"].Text().Split('/')[^1]].Explanation, problem["detail"].Text());
    }

    [Fact]
    public async Task Every_type_leads_to_a_page()
    {
        foreach (var kind in ProblemKind.ByName.Values)
        {
            var page = await _client.GetAsync(kind.Type);
            Assert.Equal("text/plain", page.Content.Headers.ContentType!.MediaType);
            Assert.StartsWith(kind.Title, await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        await Refused(_client.GetAsync("/problems/none"), 404, "not-found");
    }

    [Fact]
    public async Task A_clients_mistake_is_no_failure_in_the_log()
    {
        using var own = new ServiceInProcess();
        var client = own.CreateClient();

        await client.PostRecord("{");
        await client.PostRecord("{}", "?store=maybe");
        await client.PostRecord(new byte[JsonBody.MaxBytes + 1]);
        await client.PostAsync("/v1/evaluations", new StringContent("{}", Encoding.UTF8, "text/plain"));
        await client.GetAsync("/v1/evaluations/none");

        Assert.Empty(own.Log.Lines);
    }

    [Fact]
    public async Task A_store_that_fails_is_503_and_readiness_says_so()
    {
        using var own = new ServiceInProcess();
        var client = own.CreateClient();
        await client.GetJson("/health/ready");
        await using (var connection = new SqliteConnection($"Data Source={own.StorePath}"))
        {
            await connection.OpenAsync();
            await using var command = connection.CreateCommand();
            command.CommandText = "ALTER TABLE evaluations RENAME TO lost";
            await command.ExecuteNonQueryAsync();
        }

        var response = await client.PostRecord(own.ExampleRecord);

        await Refused(Task.FromResult(response), 503, "store-unavailable");
        Assert.NotNull(response.Headers.RetryAfter);
        await Refused(client.GetAsync("/health/ready"), 503, "store-unavailable");
        await client.GetJson("/health/live");
        Assert.Equal("pass", (await (await client.PostRecord(own.ExampleRecord, "?store=false")).Read())["outcome"].Text());
    }

    [Fact]
    public async Task A_fault_of_the_service_is_500_and_tells_nothing_of_its_insides()
    {
        using var own = new ServiceInProcess();
        using var broken = own.WithWebHostBuilder(builder => builder.ConfigureTestServices(services => services.AddSingleton<Tenant>(_ => throw new InvalidOperationException("secret"))));

        var problem = await Refused(broken.CreateClient().PostRecord(service.ExampleRecord), 500, "internal-error");

        Assert.DoesNotContain("secret", problem.ToJsonString(), StringComparison.Ordinal);
        Assert.NotEmpty(own.Log.Lines);
    }

    private static async Task<JsonNode> Refused(Task<HttpResponseMessage> call, int status, string kind)
    {
        var response = await call;
        var problem = await response.Read((HttpStatusCode)status);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
        Assert.Equal($"/problems/{kind}", problem["type"].Text());
        Assert.Equal(status, problem["status"]!.GetValue<int>());
        Assert.Equal(ProblemKind.ByName[kind].Title, problem["title"].Text());
        Assert.Matches("^[0-9a-f]{32}$", problem["traceId"].Text());
        return problem;
    }
}
