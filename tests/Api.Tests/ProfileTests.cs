using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace Api.Tests;

public sealed class ProfileTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task A_profile_is_versioned_and_reads_back()
    {
        var first = await Save("tarn-25", """{"coCo2RatioMax":0.0040,"sealsToRenew":["gasValveInlet"],"source":"invented manual, p. 40"}""");
        var second = await Save("tarn-25", """{"coCo2RatioMax":0.0030}""");

        var created = await first.Read(HttpStatusCode.Created);
        Assert.Equal("/v1/appliance-profiles/tarn-25", first.Headers.Location!.ToString());
        Assert.Equal(1, created["version"]!.GetValue<int>());
        Assert.Equal(2, (await second.Read())["version"]!.GetValue<int>());
        Assert.Equal(created.ToJsonString(), (await _client.GetJson("/v1/appliance-profiles/tarn-25?version=1")).ToJsonString());
        Assert.Equal("""{"coCo2RatioMax":0.0030}""", (await _client.GetJson("/v1/appliance-profiles/tarn-25"))["limits"]!.ToJsonString());
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync("/v1/appliance-profiles/tarn-25?version=3")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync("/v1/appliance-profiles/tarn-26")).StatusCode);
    }

    [Fact]
    public async Task With_If_Match_nobody_saves_over_what_he_has_not_seen()
    {
        const string Path = "/v1/appliance-profiles/shared";
        await Save("shared", """{"coCo2RatioMax":0.004}""");
        var seen = (await _client.GetAsync(Path)).Headers.ETag!;

        Assert.Equal(2, (await (await SaveIf(seen.ToString())).Read())["version"]!.GetValue<int>());
        foreach (var passedOver in new[] { seen.ToString(), $"W/{(await _client.GetAsync(Path)).Headers.ETag}", "nonsense", "\"another\"" })
            Assert.Equal("/problems/changed-meanwhile", (await (await SaveIf(passedOver)).Read(HttpStatusCode.PreconditionFailed))["type"].Text());
        Assert.Equal(3, (await (await SaveIf("*")).Read())["version"]!.GetValue<int>());
        Assert.Equal(HttpStatusCode.PreconditionFailed, (await SaveIf("*", "not-there")).StatusCode);

        Task<HttpResponseMessage> SaveIf(string tag, string profile = "shared")
        {
            var request = new HttpRequestMessage(HttpMethod.Put, $"/v1/appliance-profiles/{profile}") { Content = Calls.Json("""{"coCo2RatioMax":0.003}""") };
            request.Headers.TryAddWithoutValidation("If-Match", tag);
            return _client.SendAsync(request);
        }
    }

    /// <summary>RFC 9110, section 13.1.2: * is nothing at all, a tag is anything but what it names.</summary>
    [Fact]
    public async Task With_If_None_Match_nobody_saves_over_what_is_there()
    {
        var first = await SaveUnless("*");
        Assert.Equal(HttpStatusCode.Created, first.StatusCode);

        Assert.Equal("/problems/changed-meanwhile", (await (await SaveUnless("*")).Read(HttpStatusCode.PreconditionFailed))["type"].Text());
        Assert.Equal(HttpStatusCode.PreconditionFailed, (await SaveUnless($"\"another\", W/{first.Headers.ETag}")).StatusCode);
        Assert.Equal(1, (await _client.GetJson("/v1/appliance-profiles/first"))["version"]!.GetValue<int>());
        Assert.Equal(2, (await (await SaveUnless("\"another\"")).Read())["version"]!.GetValue<int>());

        var atOnce = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => SaveUnless("*", "raced")));
        Assert.Equal(7, atOnce.Count(answer => answer.StatusCode == HttpStatusCode.PreconditionFailed));
        Assert.Single(atOnce, answer => answer.StatusCode == HttpStatusCode.Created);

        Task<HttpResponseMessage> SaveUnless(string tag, string profile = "first")
        {
            var request = new HttpRequestMessage(HttpMethod.Put, $"/v1/appliance-profiles/{profile}") { Content = Calls.Json("""{"coCo2RatioMax":0.003}""") };
            request.Headers.TryAddWithoutValidation("If-None-Match", tag);
            return _client.SendAsync(request);
        }
    }

    [Fact]
    public async Task What_was_saved_is_answered_with_the_tag_by_which_it_is_read()
    {
        foreach (var limits in new[] { """{"coPpmMax":300}""", """{"coPpmMax":200}""" })
        {
            var saved = await Save("tagged", limits);

            Assert.NotNull(saved.Headers.ETag);
            Assert.Equal((await _client.GetAsync("/v1/appliance-profiles/tagged")).Headers.ETag, saved.Headers.ETag);
        }
    }

    [Fact]
    public async Task A_record_that_names_a_profile_is_judged_by_its_latest_version()
    {
        var record = service.ExampleRecord.With(node =>
        {
            node["appliance"]!["profileId"] = "strict";
            node["makerLimits"]!.AsObject().Remove("coCo2RatioMax");
        });
        await Save("strict", """{"coCo2RatioMax":0.004,"source":"invented manual"}""");
        var before = await Evaluate(record);
        await Save("strict", """{"coCo2RatioMax":0.0001,"source":"invented manual"}""");
        var after = await Evaluate(record);

        Assert.Equal("pass", before["outcome"].Text());
        Assert.Equal("""{"profileId":"strict","profileVersion":1}""", before["context"]!.ToJsonString());
        Assert.Contains(after["findings"]!.AsArray(), finding => finding!["ruleId"].Text() == "combustion-ratio" && finding["outcome"].Text() == "advisory");
        Assert.Equal("""{"profileId":"strict","profileVersion":2}""", after["context"]!.ToJsonString());
        Assert.NotEqual(before["inputHash"].Text(), after["inputHash"].Text());
    }

    /// <summary>A limit looser than the profile's counts only with its source, and is then an advisory; without one the profile's stands.</summary>
    [Theory]
    [InlineData(true, "advisory")]
    [InlineData(false, "incomplete")]
    public async Task The_records_own_limit_goes_before_the_profiles_if_it_names_its_source(bool isSourced, string outcome)
    {
        await Save("overruled", """{"coCo2RatioMax":0.0001,"source":"another invented manual"}""");

        var evaluation = await Evaluate(service.ExampleRecord.With(node =>
        {
            node["appliance"]!["profileId"] = "overruled";
            if (!isSourced)
                node["makerLimits"]!.AsObject().Remove("source");
        }));

        Assert.Equal(outcome, evaluation["outcome"].Text());
    }

    [Theory]
    [InlineData("""{"coCo2RatioMax":3,"co2PercentMn":1}""", 422, "#/coCo2RatioMax outOfRange", "#/co2PercentMn unknownMember")]
    [InlineData("""{"co2PercentMin":9,"co2PercentMax":8}""", 422, "#/co2PercentMin boundsCrossed")]
    [InlineData("""{"sealsToRenew":["gasvalveinlet",null]}""", 422, "#/sealsToRenew/0 unknownValue", "#/sealsToRenew/1 nullItem")]
    [InlineData("""{"decisionReference":"D-1","coPpmMax":-1}""", 422, "#/coPpmMax outOfRange", "#/decisionReference unknownMember")]
    [InlineData("null", 422, "# wrongType")]
    [InlineData("[]", 422, "# wrongType")]
    [InlineData("""{"source":"\ud800"}""", 422, "#/source textCharacters")]
    [InlineData("", 400, "# emptyBody")]
    [InlineData("""{"coPpmMax":1}, "recordId":{}""", 400, "# notJson")]
    [InlineData("""{"source":"a","source":"b"}""", 400, "#/source duplicateMember")]
    public async Task A_profile_is_read_as_strictly_as_a_record(string body, int status, params string[] faults)
    {
        var problem = await (await Save("faulty", body)).Read((HttpStatusCode)status);

        Assert.Equal(faults, problem["errors"]!.AsArray().Select(error => $"{error!["pointer"].Text()} {error["code"].Text()}"));
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync("/v1/appliance-profiles/faulty")).StatusCode);
    }

    /// <summary>The limits are read one level down in a record, and so the last of its 16 levels is beyond them.</summary>
    [Theory]
    [InlineData(15, 422, "unknownMember")]
    [InlineData(16, 400, "tooDeep")]
    [InlineData(17, 400, "tooDeep")]
    [InlineData(100_000, 400, "tooDeep")]
    public async Task However_deep_it_is_nested_it_is_refused_as_a_fault_of_the_caller(int levels, int status, string code)
    {
        var body = string.Concat(Enumerable.Repeat("{\"a\":", levels - 1)) + "{}" + new string('}', levels - 1);

        var problem = await (await Save("deep", body)).Read((HttpStatusCode)status);

        Assert.Equal([code], problem["errors"].Texts("code"));
    }

    [Fact]
    public async Task Of_more_faults_than_are_listed_the_rest_is_counted()
    {
        var body = "{" + string.Join(',', Enumerable.Range(0, 600).Select(n => $"\"m{n}\":1")) + "}";

        var problem = await (await Save("many", body)).Read(HttpStatusCode.UnprocessableEntity);

        Assert.Equal("#", problem["errors"]!.AsArray()[^1]!["pointer"].Text());
    }

    [Fact]
    public async Task A_byte_order_mark_is_skipped() =>
        await (await Save("marked", "\uFEFF{\"coPpmMax\":300}")).Read(HttpStatusCode.Created);

    [Theory]
    [InlineData("a%2Fb")]
    [InlineData("a%20b")]
    [InlineData("%C3%A4")]
    public async Task An_id_that_a_path_cannot_carry_plainly_is_refused(string id)
    {
        var problem = await (await Save(id, "{}")).Read(HttpStatusCode.BadRequest);

        Assert.Equal(["profileId"], problem["errors"].Texts("parameter"));
    }

    private Task<HttpResponseMessage> Save(string id, string limits) =>
        _client.PutAsync($"/v1/appliance-profiles/{id}", Calls.Json(Encoding.UTF8.GetBytes(limits)));

    private async Task<JsonNode> Evaluate(byte[] record) => await (await _client.PostRecord(record)).Read(HttpStatusCode.Created);
}
