using System.Globalization;
using System.IO.Compression;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Jobs.Summary;
using Microsoft.Extensions.DependencyInjection;
using Storage;

namespace Api.Tests;

public sealed partial class AuditTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    /// <summary>By the bytes that an audit may have that is answered at once.</summary>
    private const int MostThatFitAtOnce = 2500;

    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task A_short_audit_is_answered_at_once_in_the_order_of_the_records()
    {
        var lines = await (await _client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 250)))).ReadLines();

        Assert.Equal(251, lines.Length);
        Assert.Equal(Enumerable.Range(1, 250), lines[..^1].Select(line => line["line"]!.GetValue<int>()));
        Assert.Equal(Enumerable.Range(1, 250).Select(number => $"M-{number}"), lines[..^1].Select(line => line["recordId"].Text()));
        Assert.Equal(["#/appliance/fuel"], lines[2]["problem"]!["errors"].Texts("pointer"));
        Assert.DoesNotContain("pass", lines[0]["evaluation"]!["findings"].Texts("outcome"));
        var records = lines[^1]["summary"]!["records"]!;
        Assert.Equal((250, 200, 50), (records["read"]!.GetValue<int>(), records["judged"]!.GetValue<int>(), records["rejected"]!.GetValue<int>()));
    }

    /// <summary>HASH_RECORDS records (tests/long/audit-hashes: 5,000).</summary>
    [Fact]
    public async Task At_once_later_and_one_by_one_the_same_is_said()
    {
        var month = AuditCalls.Month(service.ExampleRecord, int.Parse(Environment.GetEnvironmentVariable("HASH_RECORDS") ?? "200", CultureInfo.InvariantCulture)).ToList();
        var (atOnce, array, sums) = (new List<JsonNode>(), new List<JsonNode>(), new List<JsonNode>());
        foreach (var part in month.Chunk(MostThatFitAtOnce))
        {
            var lines = await (await _client.PostAudit(AuditCalls.Lines(part), query: "?include=all")).ReadLines();
            var items = await (await _client.PostAudit(AuditCalls.Utf8($"[{string.Join(',', part.Select(Encoding.UTF8.GetString))}]"), "application/json", packed: true, query: "?include=all")).ReadLines();
            Assert.Equal(lines[^1].ToJsonString(), items[^1].ToJsonString());
            atOnce.AddRange(lines[..^1]);
            array.AddRange(items[..^1]);
            sums.Add(lines[^1]["summary"]!);
        }

        var later = await _client.PostAudit(AuditCalls.Lines(month), later: true, packed: true);
        var status = await _client.Completed(later.Headers.Location!);

        foreach (var (record, index) in month.Select((record, index) => (record, index)))
        {
            var stored = await _client.GetJson($"{later.Headers.Location}/records/{index + 1}");
            Assert.Equal((atOnce[index]["evaluation"]?["resultHash"].Text(), atOnce[index]["problem"]?.ToJsonString()), (stored["evaluation"]?["resultHash"].Text(), stored["problem"]?.ToJsonString()));
            var alone = await _client.PostRecord(record, "?store=false");
            if (alone.IsSuccessStatusCode)
                Assert.Equal((await alone.Read())["resultHash"].Text(), atOnce[index]["evaluation"]!["resultHash"].Text());
            else
                Assert.NotNull(atOnce[index]["problem"]);
        }

        Assert.Equal(atOnce.Select(line => line.ToJsonString()), array.Select(line => line.ToJsonString()));
        Assert.All(status["summary"]!["outcomes"]!.AsObject(), outcome => Assert.Equal(sums.Sum(sum => sum["outcomes"]![outcome.Key]!.GetValue<int>()), outcome.Value!.GetValue<int>()));
        if (sums is [var whole])
            Assert.Equal(whole.ToJsonString(), status["summary"]!.ToJsonString());
        Assert.Equal(HttpStatusCode.NotFound, (await _client.GetAsync($"{later.Headers.Location}/records/{month.Count + 1}")).StatusCode);
    }

    [Fact]
    public async Task A_stored_audit_is_accepted_followed_and_listed()
    {
        var body = AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 10));
        var accepted = await _client.PostAudit(body, later: true, key: "September");

        Assert.Equal(HttpStatusCode.Accepted, accepted.StatusCode);
        var location = accepted.Headers.Location!;
        Assert.Equal("completed", (await _client.Completed(location))["state"].Text());
        Assert.Equal("2026-09-14", (await _client.GetJson(location.ToString()))["lookedAtOn"].Text());

        Assert.Equal(location, (await _client.PostAudit(body, later: true, key: "September")).Headers.Location);
        var other = await (await _client.PostAudit([.. body, (byte)'{'], later: true, key: "September")).Read(HttpStatusCode.UnprocessableEntity);
        Assert.Equal("/problems/idempotency-key-reused", other["type"].Text());

        await _client.PostAudit(body, later: true);
        var first = await _client.GetJson("/v1/audits?limit=1");
        var second = await _client.GetJson($"/v1/audits?limit=1&next={first["next"].Text()}");
        Assert.NotEqual(first["items"]![0]!["auditId"].Text(), second["items"]![0]!["auditId"].Text());
        Assert.Equal(HttpStatusCode.OK, (await _client.DeleteAsync(location)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _client.DeleteAsync("/v1/audits/x")).StatusCode);
    }

    [Fact]
    public async Task How_far_an_audit_is_says_when_to_ask_again_until_it_has_ended()
    {
        await using var idle = service.WithWebHostBuilder(builder => builder.UseSetting("Audits:Workers", "0"));
        var client = idle.CreateDefaultClient(new Contract.ContractHandler());
        var location = (await client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 2)), later: true)).Headers.Location!;

        var queued = await client.GetAsync(location);
        Assert.Equal(TimeSpan.FromSeconds(1), queued.Headers.RetryAfter!.Delta);
        var again = new HttpRequestMessage(HttpMethod.Get, location) { Headers = { IfNoneMatch = { queued.Headers.ETag! } } };
        Assert.Equal(HttpStatusCode.NotModified, (await client.SendAsync(again)).StatusCode);

        await client.DeleteAsync(location);
        Assert.Null((await client.GetAsync(location)).Headers.RetryAfter);
    }

    [Fact]
    public async Task Pages_of_findings_lead_to_each_other()
    {
        var location = (await _client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 50)), later: true)).Headers.Location!;
        await _client.Completed(location);

        var path = $"{location}/findings?sort=outcome&limit=7";
        var rows = new List<string>();
        while (true)
        {
            var response = await _client.GetAsync(path);
            var page = await response.Read();
            rows.AddRange(page["items"]!.AsArray().Select(row => row!.ToJsonString()));
            if (page["next"] is null)
                break;
            path = Assert.Single(response.Headers.GetValues("Link")).Split('<', '>')[1];
        }

        var all = (await _client.GetStringAsync($"{location}/findings.ndjson?sort=outcome")).TrimEnd('\n').Split('\n');
        Assert.Equal(all.Select(row => JsonNode.Parse(row)!.ToJsonString()), rows);
        var next = (await _client.GetJson($"{location}/findings?sort=outcome&limit=7"))["next"].Text();
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync($"{location}/findings?sort=rule&next={next}")).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync($"{location}/findings?next=AAAA")).StatusCode);
    }

    [Fact]
    public async Task Every_record_that_does_not_pass_is_found_by_what_it_shows_as_a_whole()
    {
        // Between limit and ceiling after the work: advisories, one of which asks for the maker's decision, so the record is incomplete.
        var asks = service.ExampleRecord.With(node => node["combustion"]!["readings"]![0]!["coPpm"] = 550).Where(b => b != '\n').Append((byte)'\n');
        var location = (await _client.PostAudit([.. AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 50)), .. asks], later: true)).Headers.Location!;
        var summary = (await _client.Completed(location))["summary"]!;

        foreach (var shown in (string[])["unsafe", "incomplete", "advisory", "rejected"])
        {
            var rows = (await _client.GetJson($"{location}/findings?recordOutcome={shown}&limit=500"))["items"]!.AsArray();
            var counted = (shown == "rejected" ? summary["records"]! : summary["outcomes"]!)[shown]!.GetValue<int>();
            Assert.Equal(counted, rows.Select(row => row!["line"]!.GetValue<long>()).Distinct().Count());
            Assert.All(rows, row => Assert.Equal(shown, row!["recordOutcome"].Text()));
        }

        var incomplete = (await _client.GetJson($"{location}/findings?recordOutcome=incomplete&outcome=advisory"))["items"]!.AsArray();
        Assert.Contains(51, incomplete.Select(row => row!["line"]!.GetValue<int>()));
    }

    [Theory]
    [InlineData("=1+2")]
    [InlineData("@SUM(A1)")]
    [InlineData("+1")]
    [InlineData("-1")]
    public async Task In_CSV_no_text_of_a_record_becomes_a_formula(string text)
    {
        var record = service.ExampleRecord.With(node =>
        {
            node["recordId"] = text;
            node["combustion"]!["readings"]![0]!["coPpm"] = 2000;
        });
        var location = (await _client.PostAudit(record.Where(b => b != '\n').Append((byte)'\n').ToArray(), later: true)).Headers.Location!;
        await _client.Completed(location);

        var csv = await _client.GetStringAsync($"{location}/findings.csv");

        Assert.Contains($"'{text}", csv, StringComparison.Ordinal);
        Assert.DoesNotContain($",{text}", csv, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_report_says_what_the_JSON_says()
    {
        var location = (await _client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 50)), later: true)).Headers.Location!;
        var summary = (await _client.Completed(location))["summary"]!;

        var report = await _client.GetStringAsync($"{location}/report");

        string[] counts = [.. new[] { "unsafe", "incomplete", "advisory", "pass" }.Select(name => summary["outcomes"]![name]!.ToString()), summary["records"]!["rejected"]!.ToString()];
        Assert.Equal(counts, Count().Matches(report).Select(match => match.Groups["text"].Value));
        foreach (var row in summary["rules"]!["rows"]!.AsArray())
            Assert.Contains($"<th scope=\"row\">{row!["key"].Text()}</th><td class=\"n\">{row["counts"]!["unsafe"]}</td><td class=\"n\">{row["counts"]!["error"]}</td><td class=\"n\">{row["counts"]!["missing"]}</td><td class=\"n\">{row["counts"]!["advisory"]}</td>", report, StringComparison.Ordinal);
        foreach (var one in summary["coCo2Ratios"]!["classes"]!.AsArray())
            Assert.Contains($"<th scope=\"row\">{one!["from"]} ", report, StringComparison.Ordinal);
        foreach (var caution in summary["cautions"]!.AsArray())
            Assert.Contains(caution.Text(), WebUtility.HtmlDecode(report), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_report_needs_no_other_file_and_may_show_no_style_but_its_own()
    {
        var location = (await _client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 5)), later: true)).Headers.Location!;
        await _client.Completed(location);

        var answer = await _client.GetAsync($"{location}/report");
        var report = await answer.Content.ReadAsStringAsync();

        var style = report[(report.IndexOf("<style>", StringComparison.Ordinal) + 7)..report.IndexOf("</style>", StringComparison.Ordinal)];
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains($"style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}';", policy, StringComparison.Ordinal);
        Assert.DoesNotMatch("""\s(src|href|style)=|url\((?!"data:|#)|<script""", report);
    }

    [Theory]
    [InlineData("application/x-ndjson", "", 422, "emptyAudit")]
    [InlineData("application/x-ndjson", "\n \n", 422, "emptyAudit")]
    [InlineData("application/json", "[]", 422, "emptyAudit")]
    [InlineData("application/json", "{}", 400, "notJson")]
    [InlineData("text/csv", "recordId\n", 422, "emptyAudit")]
    [InlineData("text/csv", "a,a\n1,2\n", 400, "notCsv")]
    public async Task What_is_no_list_of_records_is_refused_at_once_and_later_alike(string mediaType, string body, int status, string code)
    {
        foreach (var later in new[] { false, true })
        {
            var problem = await (await _client.PostAudit(AuditCalls.Utf8(body), mediaType, later)).Read((HttpStatusCode)status);
            Assert.Equal([code], problem["errors"].Texts("code"));
        }
    }

    [Fact]
    public async Task What_is_too_long_for_an_answer_at_once_is_told_the_way()
    {
        foreach (var body in new[] { AuditCalls.Utf8(string.Concat(Enumerable.Repeat("{}\n", 5001))), new byte[16 * 1024 * 1024 + 1] })
        {
            var problem = await (await _client.PostAudit(body)).Read(HttpStatusCode.RequestEntityTooLarge);
            Assert.Equal("/problems/audit-too-long", problem["type"].Text());
            Assert.Contains("/v1/audits", problem["detail"].Text(), StringComparison.Ordinal);
            Assert.Contains("/v1/audits", await _client.GetStringAsync("/problems/audit-too-long"), StringComparison.Ordinal);
        }

        Assert.Equal(5001, (await (await _client.PostAudit(AuditCalls.Utf8(string.Concat(Enumerable.Repeat("{}\n", 5000))))).ReadLines()).Length);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_packed_body_that_only_grows_is_refused_and_nothing_stays(bool later)
    {
        var bomb = AuditCalls.Pack(new byte[100 * 1024 * 1024], CompressionLevel.SmallestSize);

        using var packed = new ByteArrayContent(bomb) { Headers = { ContentType = new(AuditCalls.Ndjson) } };
        packed.Headers.ContentEncoding.Add("gzip");
        var request = new HttpRequestMessage(HttpMethod.Post, later ? "/v1/audits" : AuditCalls.AtOnce) { Content = packed };
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, (await _client.SendAsync(request)).StatusCode);

        var broken = AuditCalls.Pack(service.ExampleRecord)[..^20];
        using var cut = new ByteArrayContent(broken) { Headers = { ContentType = new(AuditCalls.Ndjson) } };
        cut.Headers.ContentEncoding.Add("gzip");
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.PostAsync("/v1/audits", cut)).StatusCode);
    }

    [Fact]
    public async Task Only_what_can_be_read_is_taken()
    {
        var refused = await _client.PostAudit([], "application/xml");

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, refused.StatusCode);
        Assert.Contains("text/csv", refused.Headers.GetValues("Accept").Single(), StringComparison.Ordinal);
    }

    [GeneratedRegex("""<span class="count">(?<text>[^<]*)</span>""", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Count();
}
