using System.IO.Compression;
using System.Net;
using System.Text.Json.Nodes;
using Xunit.Abstractions;

namespace Api.Tests;

/// <summary>The answer that nobody asked more of is small enough for a telephone in a boiler cupboard, and keeps what matters on site.</summary>
public sealed class AnswerSizeTests(ServiceInProcess service, ITestOutputHelper told) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    /// <summary>The bounds are the project's own.</summary>
    [Theory]
    [InlineData("complete", 8_000)]
    [InlineData("every second section", 20_000)]
    [InlineData("one reading", 20_000)]
    public async Task An_answer_is_small(string record, int mostBytes)
    {
        var posted = await _client.PostRecord(RecordOf(record));
        Assert.Equal(HttpStatusCode.Created, posted.StatusCode);
        var answer = await posted.Content.ReadAsByteArrayAsync();
        foreach (var include in (string[])["problems", "passes", "all"])
        {
            var shown = await _client.GetByteArrayAsync($"{posted.Headers.Location}?include={include}");
            told.WriteLine($"{record}, {include}: {shown.Length} bytes, with gzip {Packed(shown)}");
        }

        foreach (var (member, value) in JsonNode.Parse(answer)!.AsObject())
            told.WriteLine($"  {member}: {System.Text.Encoding.UTF8.GetByteCount(value!.ToJsonString())} bytes{(value is JsonArray list ? $", {list.Count} items" : "")}");
        Assert.InRange(answer.Length, 1, mostBytes);
    }

    [Theory]
    [InlineData("complete")]
    [InlineData("every second section")]
    [InlineData("unsafe")]
    public async Task What_is_short_says_nothing_else_than_what_is_whole(string record)
    {
        var posted = await _client.PostRecord(RecordOf(record));
        var answer = await posted.Read(HttpStatusCode.Created);
        var passes = await _client.GetJson($"{posted.Headers.Location}?include=passes");
        var whole = await _client.GetJson($"{posted.Headers.Location}?include=all");

        foreach (var member in (string[])["outcome", "closing", "situation", "counts", "asOf", "lookedAtOn", "ruleSet", "inputHash", "resultHash", "cautions"])
            Assert.Equal(whole[member]?.ToJsonString(), answer[member]?.ToJsonString());
        foreach (var list in (string[])["duties", "missing", "notLookedAt", "due", "figures"])
            AllWithin(answer[list]!.AsArray(), [.. whole[list]!.AsArray()]);

        var problems = whole["findings"]!.AsArray().Where(finding => finding!["outcome"].Text() is not ("pass" or "notApplicable") && !IsNotLookedAt(finding)).ToList();
        AllWithin(answer["findings"]!.AsArray(), problems);
        Assert.Equal(whole["counts"]!["notLookedAt"].Number(), whole["findings"]!.AsArray().Count(finding => IsNotLookedAt(finding!)));
        AllWithin(passes["findings"]!.AsArray(), [.. whole["findings"]!.AsArray().Where(finding => finding!["outcome"].Text() != "notApplicable")]);
        foreach (var (shown, full) in answer["findings"]!.AsArray().Zip(problems))
        {
            Assert.Equal(full!["title"].Text(), shown!["title"].Text());
            if (full["outcome"].Text() == "missing")
                continue;

            foreach (var member in (string[])["message", "caution", "remedy", "evidence", "margin", "conformity", "expectedClass"])
                Assert.Equal(full[member]?.ToJsonString(), shown[member]?.ToJsonString());
            Assert.Equal(full["limit"] is null, shown["limit"] is null);
            if (shown["limit"] is { } limit)
                IsWithin(limit, full["limit"]!);
            Assert.Equal(full["references"]?.AsArray().Select(Cited), shown["references"]?.AsArray().Select(Cited));
        }

        static bool IsNotLookedAt(JsonNode finding) => (finding["outcome"].Text(), finding["weight"]?.Text()) == ("missing", "should");

        static (string, string?) Cited(JsonNode? reference) => (reference!["id"].Text(), reference["clause"]?.Text());
    }

    private byte[] RecordOf(string name) => name switch
    {
        "complete" => service.ExampleRecord,
        "every second section" => service.ExampleRecord.With(record =>
        {
            foreach (var section in record.AsObject().Where(member => member.Key != "appliance" && member.Value is JsonObject or JsonArray).Select(member => member.Key).Where((_, place) => place % 2 == 1).ToList())
                record.AsObject().Remove(section);
        }),
        "one reading" => """{"recordId":"HB-0002","jobType":"annualService","jurisdiction":"GB-ENG","finishedAt":"2026-09-14T10:25:00+01:00","appliance":{"fuel":"naturalGas"},"combustion":{"readings":[{"rate":"maximum","stage":"afterWork","coPpm":96}]}}"""u8.ToArray(),
        _ => service.ExampleRecord.With(record => record["combustion"]!["readings"]![0]!["coPpm"] = 2000),
    };

    /// <summary>As many items, each with no member that the whole has not, or has otherwise.</summary>
    private static void AllWithin(JsonArray shown, IReadOnlyList<JsonNode?> whole)
    {
        Assert.Equal(whole.Count, shown.Count);
        Assert.All(shown.Zip(whole), pair => IsWithin(pair.First!, pair.Second!));
    }

    private static void IsWithin(JsonNode shown, JsonNode whole)
    {
        if (shown is JsonObject members)
            Assert.All(members, member => IsWithin(member.Value!, whole[member.Key]!));
        else if (shown is JsonArray items)
            AllWithin(items, [.. whole.AsArray()]);
        else
            Assert.Equal(whole.ToJsonString(), shown.ToJsonString());
    }

    private static int Packed(byte[] answer)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            gzip.Write(answer);
        return (int)packed.Length;
    }
}
