using System.Text.Json.Nodes;
using Microsoft.Data.Sqlite;

namespace Api.Tests;

/// <summary>The commands audit and store, as processes of their own.</summary>
public sealed class AuditCommandTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>, IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("command-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData("month.ndjson", "", "", "\n", 2)]
    [InlineData("month.json", "[", "]", ",", 2)]
    [InlineData("clean.ndjson", "", "", "\n", 0)]
    [InlineData("unsafe.ndjson", "", "", "\n", 1)]
    public async Task A_file_is_audited_as_the_service_would(string name, string begin, string end, string between, int exitCode)
    {
        byte[][] month = [.. AuditCalls.Month(service.ExampleRecord, 5)];
        byte[][] records = exitCode switch { 0 => [month[3], month[4]], 1 => [month[1], month[3]], _ => month };
        var file = Write(name, begin + string.Join(between, records.Select(System.Text.Encoding.UTF8.GetString)) + end);

        var (code, printed, _) = await Run("audit", file, "--format", "json", "--lines", InFolder("lines.ndjson"), "--report", InFolder("report.html"));

        Assert.Equal(exitCode, code);
        using var client = service.CreateClient();
        var answered = await (await client.PostAudit(AuditCalls.Lines(records))).ReadLines();
        var lines = await File.ReadAllLinesAsync(InFolder("lines.ndjson"));
        Assert.Equal(answered[..^1].Select(line => line["evaluation"]?["outcome"].Text()), lines.Select(line => JsonNode.Parse(line)!["evaluation"]?["outcome"].Text()));
        Assert.Equal(answered[^1]["summary"]!["records"]!.ToJsonString(), JsonNode.Parse(printed)!["records"]!.ToJsonString());
        Assert.Equal(answered[^1]["summary"]!["outcomes"]!.ToJsonString(), JsonNode.Parse(printed)!["outcomes"]!.ToJsonString());
        Assert.Contains("Findings by rule", await File.ReadAllTextAsync(InFolder("report.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_printed_says_where_and_when_and_of_a_file_that_cannot_be_read_no_good()
    {
        byte[][] month = [.. AuditCalls.Month(service.ExampleRecord, 5)];
        var (_, dangers, _) = await Run("audit", Write("unsafe.ndjson", System.Text.Encoding.UTF8.GetString(AuditCalls.Lines([month[1], month[2]]))), "--report", InFolder("report.html"));
        var (code, nothing, _) = await Run("audit", Write("coal.ndjson", System.Text.Encoding.UTF8.GetString(month[2])), "--report", InFolder("nothing.html"));

        Assert.Contains("P-77, visited 14 September 2026, engineer 7001234. Line 1, record M-2.", dangers.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Matches(@"1 +M-2 +P-77 +2026-09-14 ", dangers);
        Assert.Contains("P-77 <span class=\"basis\">14 September 2026</span> <span class=\"basis\">engineer 7001234</span>", await File.ReadAllTextAsync(InFolder("report.html")), StringComparison.Ordinal);
        Assert.Equal(2, code);
        foreach (var said in new[] { nothing.ReplaceLineEndings(" "), await File.ReadAllTextAsync(InFolder("nothing.html")) })
        {
            Assert.Contains("The record could not be judged, so nothing is known of any danger.", said, StringComparison.Ordinal);
            Assert.Contains("The first fault: Line 1, record M-3, appliance, fuel:", said, StringComparison.Ordinal);
            Assert.Contains("/v1/record-template.csv", said, StringComparison.Ordinal);
        }

        Assert.All((dangers + nothing).Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Theory]
    [InlineData("empty.ndjson", "", "no record")]
    [InlineData("not.json", "{}", "array")]
    public async Task What_is_no_list_of_records_is_said_to_be_none(string name, string text, string says)
    {
        var (code, _, complained) = await Run("audit", Write(name, text));

        Assert.Equal(2, code);
        Assert.Contains(says, complained, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_store_gives_out_what_it_holds_of_an_appliance_keeps_what_it_must_and_is_copied()
    {
        var store = InFolder("c.db");
        using (var running = new RunningService("--urls=http://127.0.0.1:0", $"--Store:Path={store}", "--Store:Create=true"))
        {
            using var client = await running.Listening();
            foreach (var (serial, use, day) in new[] { ("A", "ownerOccupied", "2019-05-14"), ("A", "ownerOccupied", "2026-05-14"), ("B", "rented", "2019-05-14") })
                await (await client.PostRecord(Finished(serial, use, day))).Read(System.Net.HttpStatusCode.Created);
            await client.Completed((await client.PostAudit([.. Finished("A", "ownerOccupied", "2018-05-14"), (byte)'\n'], later: true)).Headers.Location!);

            // While the service goes on.
            Assert.Equal(0, (await Run("store", "backup", InFolder("copy.db"), "--path", store)).ExitCode);
        }

        var exported = (await Run("store", "export", "A", "--path", store)).Printed.TrimEnd('\n').Split('\n').Select(line => JsonNode.Parse(line)!).ToList();
        Assert.Equal(["evaluation", "evaluation", "audit"], exported.Select(line => line["source"].Text()));
        Assert.All(exported, line => Assert.Equal("A", line["record"]!["appliance"]!["serialNumber"].Text()));
        Assert.Empty((await Run("store", "export", "A", "--maker", "Another", "--path", store)).Printed);

        var (code, purged, _) = await Run("store", "purge", "--years", "6", "--path", store);
        Assert.Equal(0, code);
        Assert.Contains("record HB-0001, Quillback A, finished 2019-05-14", purged, StringComparison.Ordinal);
        Assert.Contains("line 1: record HB-0001, Quillback A, finished 2018-05-14", purged, StringComparison.Ordinal);
        Assert.Contains("1 evaluations, 1 records of audits and 0 audits", purged, StringComparison.Ordinal);
        Assert.Contains("1 records of that age stay", purged, StringComparison.Ordinal);
        Assert.Single((await Run("store", "export", "A", "--path", store)).Printed.TrimEnd('\n').Split('\n'));
        Assert.Single((await Run("store", "export", "B", "--path", store)).Printed.TrimEnd('\n').Split('\n'));

        Assert.Equal(3, (await Run("store", "export", "A", "--path", InFolder("copy.db"))).Printed.TrimEnd('\n').Split('\n').Length);
        Assert.NotEqual(0, (await Run("store", "purge", "--years", "1", "--path", store)).ExitCode);
        Assert.Equal(1, (await Run("store", "backup", InFolder("copy.db"), "--path", store)).ExitCode);
        SqliteConnection.ClearAllPools();
    }

    private byte[] Finished(string serial, string use, string day) => service.ExampleRecord.With(record =>
    {
        record["appliance"]!["serialNumber"] = serial;
        record["appliance"]!["installedOn"] = "2015-05-01";
        record.AsObject().Remove("previousVisit");
        record["premises"]!["use"] = use;
        record["startedAt"] = $"{day}T09:00:00+01:00";
        record["finishedAt"] = $"{day}T10:00:00+01:00";
    });

    private string InFolder(string name) => Path.Combine(_folder.FullName, name);

    private string Write(string name, string text)
    {
        File.WriteAllText(InFolder(name), text);
        return InFolder(name);
    }

    private static async Task<(int ExitCode, string Printed, string Said)> Run(params string[] arguments)
    {
        using var running = new RunningService(arguments);
        return await running.Outcome();
    }
}
