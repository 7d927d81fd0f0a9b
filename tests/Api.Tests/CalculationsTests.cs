using System.Net;

namespace Api.Tests;

/// <summary>The computations behind a record, asked for one at a time.</summary>
public sealed class CalculationsTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task The_list_says_what_each_needs_and_where_its_formula_stands()
    {
        var list = await _client.GetJson("/v1/calculations?limit=500");

        var items = list["items"]!.AsArray();
        Assert.True(items.Count >= 25);
        Assert.Equal(items.Count, list["total"]!.GetValue<int>());
        Assert.All(items, item =>
        {
            Assert.NotEmpty(item!["what"].Text());
            Assert.NotEmpty(item["formula"].Text());
            Assert.NotEmpty(item["source"].Text());
            Assert.NotEmpty(item["inputs"]!.AsArray());
        });
        var co = items.Single(item => item!["name"].Text() == "coCo2Ratio")!["inputs"]![0]!;
        Assert.Equal(("coPpm", "number", "[ppm]", 1_000_000m, true),
            (co["name"].Text(), co["kind"].Text(), co["unit"].Text(), co["max"]!.GetValue<decimal>(), co["required"]!.GetValue<bool>()));
    }

    [Theory]
    [InlineData("coCo2Ratio", """{"coPpm":350,"co2Percent":8.75}""", 0.004, 1e-12)] // arithmetic
    [InlineData("coAirFree", """{"coPpm":200,"o2Percent":9}""", 351.26, 0.01)] // 200 x 20.9 / 11.9
    [InlineData("excessAir", """{"fuel":"naturalGas","o2Percent":5}""", 28.1, 0.3)] // 28.1 % in a US DOE steam tip sheet for natural gas
    [InlineData("flueDewPoint", """{"fuel":"propane","o2Percent":0}""", 54.88, 0.01)] // IAPWS-IF97, stoichiometric, dry air
    [InlineData("efficiencyNet", """{"fuel":"naturalGas","co2Percent":9.15,"flueTemperatureC":40,"airTemperatureC":20}""", 105.21, 0.05)] // own recomputation, air ratio 1.25
    [InlineData("heatInputGross", """{"gasRateM3PerHour":2.649,"calorificValueMjPerM3":39.2}""", 28.8447, 0.0001)]
    [InlineData("leakRate", """{"installationVolumeM3":0.035,"dropMbar":4,"durationMinutes":2}""", 4.1451, 0.0001)] // own recomputation
    [InlineData("energy", """{"volumeM3":2,"calorificValueMjPerM3":39.3}""", 22.33, 0.005)] // a bill prints 22
    [InlineData("readingUncertainty", """{"reading":96,"absolute":10,"relativePercent":5,"resolution":1}""", 5.7807, 0.0001)] // sqrt(100/3 + 1/12)
    [InlineData("conformityAtMost", """{"reading":350,"standardUncertainty":9,"limit":350}""", 0.5, 1e-9)] // the middle of a normal distribution
    public async Task A_computation_gives_its_value_with_working(string name, string body, double expected, double tolerance)
    {
        var result = await (await _client.PostAsync($"/v1/calculations/{name}", Calls.Json(body))).Read();

        Assert.Equal(expected, result["value"]!.GetValue<double>(), tolerance);
        Assert.EndsWith($"= {result["value"]!.ToJsonString()} {result["unit"].Text()}", result["working"].Text(), StringComparison.Ordinal);
        Assert.NotEmpty(result["source"].Text());
    }

    [Fact]
    public async Task The_working_has_the_numbers_put_in_and_the_constants_name_the_defaults()
    {
        var result = await (await _client.PostAsync("/v1/calculations/coAirFree", Calls.Json("""{"coPpm":96,"o2Percent":0}"""))).Read();

        Assert.Equal("coPpm x o2InAirPercent / (o2InAirPercent - o2Percent)", result["formula"].Text());
        Assert.Equal("96 x 20.9 / (20.9 - 0) = 96 [ppm]", result["working"].Text());
        Assert.Equal(["o2InAirPercent = 20.9 %"], result["constants"]!.AsArray().Select(text => text.Text()));
    }

    [Fact]
    public async Task A_date_comes_as_a_date()
    {
        // Published example: a check of 10 February 2018, the next on 5 January 2019, is due again on 10 February 2020 (regulation 36A).
        var result = await (await _client.PostAsync("/v1/calculations/landlordNextDeadline", Calls.Json("""{"previousCountedOn":"2018-02-10","checkedOn":"2019-01-05"}"""))).Read();

        Assert.Equal("2020-02-10", result["date"].Text());
        Assert.Null(result["value"]);
    }

    [Fact]
    public async Task A_figure_of_a_record_comes_out_the_same_by_its_own_name()
    {
        var evaluation = await (await _client.PostRecord(service.ExampleRecord, "?store=false&include=all")).Read();
        var figure = evaluation["figures"]!.AsArray().First(figure => figure!["name"].Text() == "efficiencyNet")!;

        var result = await (await _client.PostAsync("/v1/calculations/efficiencyNet", Calls.Json("""{"fuel":"naturalGas","o2Percent":4.5,"flueTemperatureC":60,"airTemperatureC":18}"""))).Read();

        Assert.Equal(figure["value"]!.ToJsonString(), result["value"]!.ToJsonString());
        Assert.Equal(figure["formula"].Text(), result["formula"].Text());
    }

    [Theory]
    [InlineData("coCo2Ratio", """{"coPpm":-1,"co2Percent":0}""", "#/coPpm outOfRange", "#/co2Percent outOfRange")]
    [InlineData("coCo2Ratio", """{"colour":1,"coPpm":"96"}""", "#/colour unknownMember", "#/coPpm wrongType", "#/co2Percent requiredMember")]
    [InlineData("coCo2Ratio", """{"coPpm":null,"co2Percent":9}""", "#/coPpm requiredMember")]
    [InlineData("coCo2Ratio", """{"coPpm":1e-40,"co2Percent":9}""", "#/coPpm notExact")]
    [InlineData("coCo2Ratio", "[]", "#")]
    [InlineData("excessAir", """{"fuel":"NaturalGas","o2Percent":5}""", "#/fuel unknownValue")]
    [InlineData("excessAir", """{"fuel":"\ud800","o2Percent":5}""", "#/fuel")]
    [InlineData("excessAir", """{"fuel":"propane","o2Percent":5,"co2Percent":9}""", "#/o2Percent outOfRange")]
    [InlineData("flueLossNet", """{"fuel":"propane","o2Percent":5,"flueTemperatureC":20,"airTemperatureC":30}""", "#/airTemperatureC outOfRange")]
    [InlineData("landlordDeadline", """{"previousCountedOn":"2026-02-30"}""", "#/previousCountedOn notADate")]
    public async Task Out_of_range_or_missing_is_422_with_every_fault(string name, string body, params string[] faults)
    {
        var problem = await (await _client.PostAsync($"/v1/calculations/{name}", Calls.Json(body))).Read(HttpStatusCode.UnprocessableEntity);

        var found = problem["errors"]!.AsArray().Select(error => $"{error!["pointer"].Text()} {error["code"].Text()}").ToList();
        Assert.Equal(faults.Length, found.Count);
        Assert.All(faults, fault => Assert.Contains(found, one => one.StartsWith(fault, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("", "# emptyBody")]
    [InlineData("{", "# notJson")]
    [InlineData("""{"coPpm":1,"coPpm":2,"colour":3}""", "#/coPpm duplicateMember", "#/colour unknownMember", "#/co2Percent requiredMember")]
    public async Task A_body_without_one_meaning_is_400_with_every_fault(string body, params string[] faults)
    {
        var problem = await (await _client.PostAsync("/v1/calculations/coCo2Ratio", Calls.Json(body))).Read(HttpStatusCode.BadRequest);

        Assert.Equal(faults, problem["errors"]!.AsArray().Select(error => $"{error!["pointer"].Text()} {error["code"].Text()}"));
    }

    [Fact]
    public async Task Of_very_many_faults_the_first_are_listed_and_the_rest_counted_and_long_names_cut()
    {
        var unknown = string.Concat(Enumerable.Range(0, 600).Select(number => $",\"{new string('n', 1000)}{number}\":1"));
        foreach (var (body, status, more) in new[]
        {
            ($$"""{"coPpm":1,"co2Percent":"x"{{unknown}}}""", HttpStatusCode.UnprocessableEntity, 101),
            ($$"""{"coPpm":1,"co2Percent":9{{string.Concat(Enumerable.Repeat(",\"coPpm\":1", 501))}}}""", HttpStatusCode.BadRequest, 1),
        })
        {
            var errors = (await (await _client.PostAsync("/v1/calculations/coCo2Ratio", Calls.Json(body))).Read(status))["errors"]!.AsArray();

            Assert.Equal((501, "#", "moreFaults", $"Not listed: {more} more."), (errors.Count, errors[^1]!["pointer"].Text(), errors[^1]!["code"].Text(), errors[^1]!["detail"].Text()));
            Assert.All(errors, error => Assert.True(error!["pointer"].Text().Length < 400));
        }
    }

    [Fact]
    public async Task Unknown_names_queries_and_media_types_are_refused()
    {
        Assert.Equal(HttpStatusCode.NotFound, (await _client.PostAsync("/v1/calculations/nothing", Calls.Json("{}"))).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.PostAsync("/v1/calculations/coCo2Ratio?x=1", Calls.Json("{}"))).StatusCode);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, (await _client.PostAsync("/v1/calculations/coCo2Ratio", new StringContent("coPpm=1"))).StatusCode);
        Assert.Equal(HttpStatusCode.MethodNotAllowed, (await _client.GetAsync("/v1/calculations/coCo2Ratio")).StatusCode);
    }
}
