using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Mvc.Testing;

namespace Api.Tests;

/// <summary>Who reads what an audit found must know where to go: rows, page and report say the premises, the day of the visit and the engineer.</summary>
public sealed class AuditPlaceAndDayTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const int Dangerous = 130;

    private readonly HttpClient _client = service.CreateClient();

    private readonly HttpClient _pages = ((WebApplicationFactory<Program>)service).CreateClient();

    [Fact]
    public async Task The_report_names_every_unsafe_record_with_place_day_engineer_and_its_gravest_finding()
    {
        var location = await Audited(Enumerable.Range(1, Dangerous).Select(number => Record(number, coPpm: 2000, change: record => record["ambientCo"]!["afterPpm"] = 60)).Append(Record(999, coPpm: 96)));

        var report = await _client.GetStringAsync($"{location}/report");

        for (var number = 1; number <= Dangerous; number++)
        {
            var row = RowOf(report, number);
            foreach (var said in new[] { $"PLACE-{number:000} ", "14 September 2026", $"engineer 7{number:000}", $"M-{number}, line {number}" })
                Assert.Contains(said, row, StringComparison.Ordinal);
        }

        var first = report.IndexOf("id=\"dangers\"", StringComparison.Ordinal);
        Assert.DoesNotContain("PLACE-999", report[first..report.IndexOf("</section>", first, StringComparison.Ordinal)], StringComparison.Ordinal);

        // The gravest of several is the first of the gravest expected class.
        var found = (await _client.GetJson($"{location}/records/1"))["evaluation"]!["findings"]!.AsArray().Where(finding => finding!["outcome"].Text() == "unsafe").ToList();
        var gravest = found.MaxBy(finding => Array.IndexOf(["atRisk", "immediatelyDangerous"], finding!["expectedClass"]?.Text()))!["message"].Text();
        Assert.Contains(gravest, WebUtility.HtmlDecode(RowOf(report, 1)), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Rows_say_premises_and_day_in_JSON_in_CSV_and_on_the_page()
    {
        var location = await Audited([Record(1, coPpm: 2000), Record(2, coPpm: 96, change: record => record["appliance"]!["fuel"] = "coal")]);

        var rows = (await _client.GetJson($"{location}/findings?limit=500"))["items"]!.AsArray();
        var (ofFirst, ofSecond) = (rows.Where(row => row!["line"].Number() == 1).ToList(), rows.Where(row => row!["line"].Number() == 2).ToList());
        Assert.NotEmpty(ofFirst);
        Assert.All(ofFirst, row => Assert.Equal(("PLACE-001", "2026-09-14"), (row!["premises"].Text(), row["visitedOn"].Text())));
        Assert.NotEmpty(ofSecond);
        Assert.All(ofSecond, row => Assert.Equal((null, null), (row!["premises"], row["visitedOn"])));
        var csv = (await _client.GetStringAsync($"{location}/findings.csv?outcome=unsafe")).Split("\r\n");
        Assert.EndsWith(",premises,visitedOn,code", csv[0], StringComparison.Ordinal);
        Assert.EndsWith(",PLACE-001,2026-09-14,", csv[1], StringComparison.Ordinal);
        Assert.Equal(("PLACE-001", "2026-09-14", "7001"), (await _client.GetJson(location.ToString()))["summary"]!["worstAppliances"]!["rows"]![0]! is var worst
            ? (worst["premises"].Text(), worst["visitedOn"].Text(), worst["engineer"].Text()) : default);
        Assert.Contains("PLACE-001, visited 14 September 2026, engineer 7001", await PageOf(location), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_nothing_could_be_judged_no_reader_is_told_that_there_is_no_danger()
    {
        var location = await Audited([Record(1, coPpm: 96, change: record => record["appliance"]!["fuel"] = "coal"), Encoding.UTF8.GetBytes("{}")]);

        var summary = (await _client.GetJson(location.ToString()))["summary"]!;
        Assert.True(summary["firstFault"] is not null, $"No first fault is said: {summary}");
        var fault = summary["firstFault"]!;
        Assert.Equal((1, "M-1", "#/appliance/fuel"), (fault["line"].Number(), fault["recordId"].Text(), fault["pointer"].Text()));
        foreach (var read in new[] { await PageOf(location), await _client.GetStringAsync($"{location}/report") })
        {
            var text = WebUtility.HtmlDecode(read);
            Assert.Contains("None of the 2 records could be judged, so nothing is known of any danger.", text, StringComparison.Ordinal);
            Assert.Contains("Line 1, record M-1, appliance, fuel: " + fault["detail"].Text(), text, StringComparison.Ordinal);
            Assert.Contains("/v1/record-template.csv", text, StringComparison.Ordinal);
            Assert.DoesNotMatch("No record|Nothing is overdue|Nothing falls due", text);
        }
    }

    [Fact]
    public async Task Where_some_could_not_be_judged_nothing_is_said_of_them()
    {
        var location = await Audited([Record(1, coPpm: 96), Record(2, coPpm: 96, change: record => record["appliance"]!["fuel"] = "coal")]);

        foreach (var read in new[] { await PageOf(location), await _client.GetStringAsync($"{location}/report") })
            Assert.Contains("No danger is shown by the 1 record that could be judged; 1 record could not be judged, and nothing is known of it.", read, StringComparison.Ordinal);
    }

    private async Task<Uri> Audited(IEnumerable<byte[]> records)
    {
        var location = (await _client.PostAudit(AuditCalls.Lines(records), later: true)).Headers.Location!;
        await _client.Completed(location);
        return location;
    }

    private Task<string> PageOf(Uri audit) => _pages.GetStringAsync(audit.ToString()["/v1".Length..]);

    /// <summary>A visit that ended half an hour after midnight, which in UTC is the day before.</summary>
    private byte[] Record(int number, int coPpm, Action<JsonNode>? change = null) => service.ExampleRecord.With(record =>
    {
        record["recordId"] = $"M-{number}";
        record["premises"]!["reference"] = $"PLACE-{number:000}";
        record["engineer"]!["licenceNumber"] = $"7{number:000}";
        record["startedAt"] = "2026-09-13T23:10:00+01:00";
        record["finishedAt"] = "2026-09-14T00:30:00+01:00";
        record["combustion"]!["readings"]![0]!["coPpm"] = coPpm;
        change?.Invoke(record);
    });

    private static string RowOf(string report, int line)
    {
        var from = report.IndexOf($"<tr data-line=\"{line}\"", StringComparison.Ordinal);
        Assert.True(from >= 0, $"line {line} is not named");
        return report[from..report.IndexOf("</tr>", from, StringComparison.Ordinal)];
    }
}
