using System.Diagnostics;
using System.Net;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>What is refused at one door is refused at every other: a record posted, a line of an audit, and the commands.</summary>
public sealed class DoorTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>, IDisposable
{
    private readonly HttpClient _client = service.CreateClient();
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("doors-");

    public static TheoryData<string, string[]> Refused { get; } = new()
    {
        { "nobody's profile", ["#/appliance/profileId unknownReference"] },
        { "nobody's evaluation", ["#/supersedes unknownReference"] },
        { "another boiler", ["#/supersedes otherAppliance"] },
        { "better, nobody says why", ["#/supersedesBecause reasonNeeded"] },
        { "measured again before", ["#/supersedesBecause/reason outOfOrder"] },
        { "next June", ["#/finishedAt notYet"] },
        { "a place whose law nobody here holds", ["#/jurisdiction unknownValue"] },
        { "next June, by nobody's profile", ["#/finishedAt notYet", "#/appliance/profileId unknownReference"] },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task Every_door_refuses_alike(string what, string[] expected)
    {
        var dangerous = await Post(Danger($"D-{what.Length}"));
        var record = service.ExampleRecord.With(node =>
        {
            node["appliance"]!["serialNumber"] = $"D-{what.Length}";
            if (what.Contains("June", StringComparison.Ordinal))
                (node["startedAt"], node["finishedAt"]) = ("2027-06-01T09:00:00+01:00", "2027-06-01T10:25:00+01:00");
            if (what.StartsWith("a place", StringComparison.Ordinal))
                node["jurisdiction"] = "FR-COR";
            if (what.EndsWith("profile", StringComparison.Ordinal))
                node["appliance"]!["profileId"] = "nobodys";
            if (what is "nobody's evaluation")
                node["supersedes"] = "nowhere";
            if (what is "another boiler" or "better, nobody says why" or "measured again before")
                node["supersedes"] = dangerous;
            if (what is "another boiler")
                node["appliance"]!["serialNumber"] = "another";
            if (what is "measured again before")
                node["supersedesBecause"] = new JsonObject { ["reason"] = "measuredAgain" };
        });

        Assert.Equal(expected, Faults(await (await _client.PostRecord(record)).Read(HttpStatusCode.UnprocessableEntity)));

        var lines = AuditCalls.Lines([record]);
        Assert.Equal(expected, FaultsOfLine((await (await _client.PostAudit(lines)).ReadLines())[0]));

        var audit = (await _client.PostAudit(lines, later: true)).Headers.Location!;
        await _client.Completed(audit);
        Assert.Equal(expected.Order(StringComparer.Ordinal), (await _client.GetJson($"{audit}/findings"))["items"]!.AsArray()
            .Select(row => $"{row!["subject"].Text()} {row["code"].Text()}").Order(StringComparer.Ordinal));

        var file = Path.Combine(_folder.FullName, "visit.ndjson");
        await File.WriteAllBytesAsync(file, lines);
        foreach (var command in (string[])["check", "audit"])
        {
            var (exitCode, output, error) = await Run(command, file, "--path", service.StorePath, "--format", command == "check" ? "json" : "ndjson");
            Assert.True(exitCode == 2, $"{command}: {exitCode}\n{output}\n{error}");
            Assert.Equal(expected, FaultsOfLine(JsonNode.Parse(output.Split('\n')[0])!));
        }
    }

    [Fact]
    public async Task Commands_judge_by_the_profile_in_the_store_and_say_where_they_looked()
    {
        var limits = new JsonObject { ["coPpmMax"] = 50, ["source"] = "invented instructions, page 4" };
        (await _client.PutAsync("/v1/appliance-profiles/strict", Calls.Json(limits.ToJsonString()))).EnsureSuccessStatusCode();
        var file = Path.Combine(_folder.FullName, "visit.json");
        var record = service.ExampleRecord.With(node =>
        {
            node.AsObject().Remove("makerLimits");
            node["appliance"]!["serialNumber"] = "D-P";
            node["appliance"]!["profileId"] = "strict";
        });
        await File.WriteAllBytesAsync(file, record);
        var posted = await (await _client.PostRecord(record, "?store=false")).Read();

        var (_, output, _) = await Run("check", file, "--path", service.StorePath, "--format", "json");
        var evaluation = JsonNode.Parse(output)!["evaluation"]!;
        Assert.Equal(("strict", posted["outcome"].Text()), (evaluation["context"]!["profileId"].Text(), evaluation["outcome"].Text()));

        // Where there is no store none is made, and the record is refused.
        var (exitCode, none, error) = await Run("check", file);
        Assert.Equal((2, ""), (exitCode, none));
        Assert.Contains(Path.Combine(_folder.FullName, "data", "compliance.db"), string.Concat(error.Split('\n').Select(line => line.Trim())), StringComparison.Ordinal);
        Assert.Equal(["visit.json"], _folder.EnumerateFileSystemInfos().Select(entry => entry.Name));
    }

    [Fact]
    public async Task A_draft_may_lie_ahead_and_a_clock_may_be_a_day_wrong()
    {
        byte[] At(string day) => service.ExampleRecord.With(node =>
        {
            node["appliance"]!["serialNumber"] = "D-T";
            (node["startedAt"], node["finishedAt"]) = ($"{day}T09:00:00+01:00", $"{day}T10:25:00+01:00");
        });

        Assert.Equal(HttpStatusCode.OK, (await _client.PostRecord(At("2027-06-01"), "?store=false")).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await _client.PostRecord(At("2026-09-15"))).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await _client.PostRecord(At("2026-09-16"))).StatusCode);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private byte[] Danger(string serial) => service.ExampleRecord.With(node =>
    {
        node["appliance"]!["serialNumber"] = serial;
        node["combustion"]!["readings"]![0]!["coPpm"] = 2000;
    });

    private async Task<string> Post(byte[] record) => (await (await _client.PostRecord(record)).Read(HttpStatusCode.Created))["evaluationId"].Text();

    private static string[] Faults(JsonNode problem) => [.. problem["errors"]!.AsArray().Select(fault => $"{fault!["pointer"].Text()} {fault["code"].Text()}")];

    private static string[] FaultsOfLine(JsonNode line)
    {
        Assert.True(line["problem"] is not null, $"It was not refused: {line.ToJsonString()}");
        return Faults(line["problem"]!);
    }

    private async Task<(int ExitCode, string Out, string Error)> Run(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location, .. arguments])
        {
            WorkingDirectory = _folder.FullName,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        var error = process.StandardError.ReadToEndAsync(patience.Token);
        var output = await process.StandardOutput.ReadToEndAsync(patience.Token);
        await process.WaitForExitAsync(patience.Token);
        return (process.ExitCode, output, await error);
    }
}
