using System.Net;
using System.Text.Json.Nodes;
using Ical.Net;

namespace Api.Tests;

/// <summary>What falls due, by the latest record on each subject.</summary>
public sealed class DueTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task The_example_gives_its_dates_in_order_and_in_pages()
    {
        await Post("D-1", "2026-09-14");

        var all = await _client.GetJson("/v1/due?from=2026-09-14&to=2031-01-01");
        var ofIt = all["items"]!.AsArray().Where(item => item!["serialNumber"]?.GetValue<string>() is "D-1" or "FA-1" || item["licenceNumber"] is not null)
            .Select(item => $"{item!["kind"].Text()} {item["by"].Text()}").ToList();
        Assert.Equal(["calibration 2027-03-02", "annualService 2027-09-14", "engineerCategory 2028-05-01", "coAlarmReplacement 2030-01-01", "inhibitorDose 2030-09-10"], ofIt);
        Assert.Contains(all["items"]!.AsArray(), item => item!["kind"].Text() == "inhibitorDose" && item["basis"].Text().Contains("no law sets an interval", StringComparison.Ordinal));

        var first = await _client.GetJson("/v1/due?from=2026-09-14&to=2031-01-01&limit=2");
        var second = await _client.GetJson($"/v1/due?from=2026-09-14&to=2031-01-01&limit=2&next={Uri.EscapeDataString(first["next"].Text())}");
        Assert.Equal(
            all["items"]!.AsArray().Take(4).Select(item => item!.ToJsonString()),
            first["items"]!.AsArray().Concat(second["items"]!.AsArray()).Select(item => item!.ToJsonString()));
    }

    [Fact]
    public async Task A_later_visit_moves_the_date_and_a_corrected_one_takes_it_back()
    {
        await Post("D-2", "2025-10-01");
        var later = await Post("D-2", "2026-09-01");
        Assert.Equal(["2027-09-01"], await Services("D-2"));

        await Post("D-2", "2026-09-01", node =>
        {
            node["supersedes"] = later["evaluationId"].Text();
            node["jobType"] = "repair";
        });
        Assert.Equal(["2026-10-01"], await Services("D-2"));
    }

    [Fact]
    public async Task A_landlords_check_comes_with_its_window()
    {
        await Post("D-3", "2026-09-01", node =>
        {
            node["jobType"] = "landlordCheck";
            node["premises"]!["use"] = "rented";
        });

        var check = (await Items("D-3")).Single(item => item["kind"].Text() == "landlordCheck");
        Assert.Equal(("2027-09-01", "2027-07-02"), (check["by"].Text(), check["windowFrom"].Text()));
    }

    [Fact]
    public async Task A_calendar_is_one_that_another_program_reads()
    {
        await Post("D-4", "2026-08-01");
        var response = await _client.GetAsync("/v1/due.ics?from=2026-09-14&to=2031-01-01");

        Assert.Equal("text/calendar", response.Content.Headers.ContentType!.MediaType);
        var calendar = Calendar.Load(await response.Content.ReadAsStringAsync())!;
        var due = calendar.Events.Single(one => one.Summary!.Contains("D-4", StringComparison.Ordinal) && one.Summary.Contains("service", StringComparison.Ordinal));
        Assert.Equal((new DateOnly(2027, 8, 1), false), (due.Start!.Date, due.Start.HasTime));
        Assert.Equal(calendar.Events.Count, calendar.Events.Select(one => one.Uid).Distinct().Count());
    }

    [Fact]
    public async Task Crossed_days_are_refused() =>
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync("/v1/due?from=2026-09-14&to=2026-09-13")).StatusCode);

    private async Task<IEnumerable<string>> Services(string serial) =>
        (await Items(serial)).Where(item => item["kind"].Text() == "annualService").Select(item => item["by"].Text());

    private async Task<IReadOnlyList<JsonNode>> Items(string serial) =>
        [.. (await _client.GetJson("/v1/due?from=2026-01-01&to=2031-01-01&limit=500"))["items"]!.AsArray().OfType<JsonNode>().Where(item => item["serialNumber"]?.GetValue<string>() == serial)];

    private async Task<JsonNode> Post(string serial, string day, Action<JsonNode>? change = null) => await (await _client.PostRecord(service.ExampleRecord.With(node =>
    {
        node["recordId"] = $"{serial} {day}";
        node["appliance"]!["serialNumber"] = serial;
        node["startedAt"] = $"{day}T09:00:00+01:00";
        node["finishedAt"] = $"{day}T10:25:00+01:00";
        node["previousVisit"] = JsonNode.Parse("""{"deemedOn":"2020-01-05"}""");
        node["paperwork"]!.AsObject().Remove("nextDueOn");
        change?.Invoke(node);
    }))).Read(HttpStatusCode.Created);
}
