using System.Diagnostics;
using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>
/// What may befall a running service while records arrive, over real HTTP: a clear error or a reported line, bounded memory, and it still
/// answers. HOSTILE_GIGABYTES makes the long line longer (tests/long/audit-hostile: 10); here it has 200 MB.
/// </summary>
[Collection("Heavy processes")]
public sealed class HostileAuditTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const string Loopback = "--urls=http://127.0.0.1:0";

    private static readonly long LongLine = long.Parse(Environment.GetEnvironmentVariable("HOSTILE_GIGABYTES") ?? "0", System.Globalization.CultureInfo.InvariantCulture) * 1_000_000_000;

    private byte[] Good => [.. service.ExampleRecord.With(_ => { }), (byte)'\n'];

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_line_that_nobody_can_read_is_reported_and_the_others_are_judged(bool later)
    {
        using var running = new RunningService(Loopback);
        using var client = await running.Listening();
        byte[] body =
        [
            .. Good,
            .. AuditCalls.Utf8(new string('[', 100_000) + new string(']', 100_000) + "\n"),
            .. AuditCalls.Utf8($"{{\"recordId\":{new string('[', 100_000)}\n"),
            0, 0, 0, (byte)'\n',
            .. AuditCalls.Utf8("{\"recordId\":\"a\0b\"}\n"),
            (byte)'{', (byte)'"', 0xC3, 0x28, (byte)'"', (byte)'}', (byte)'\n',
            0xFF, 0xFE, (byte)'\n',
            .. AuditCalls.Utf8(new string('9', 1_000_000) + "\n"),
            .. Good,
        ];

        var response = await client.PostAudit(body, later: later);
        var summary = later ? (await client.Completed(response.Headers.Location!))["summary"]! : (await response.ReadLines())[^1]["summary"]!;

        Assert.Equal((9, 2, 7), (summary["records"]!["read"].Number(), summary["records"]!["judged"].Number(), summary["records"]!["rejected"].Number()));
        if (later)
        {
            var rows = (await client.GetJson($"{response.Headers.Location}/findings?outcome=rejected"))["items"]!.AsArray();
            Assert.Equal([2, 3, 4, 5, 6, 7, 8], rows.Select(row => row!["line"].Number()).Distinct());
        }

        await StillAnswers(client);
    }

    [Fact]
    public async Task A_line_without_end_is_reported_in_bounded_memory()
    {
        using var running = new RunningService(Loopback);
        using var client = await running.Listening();
        client.Timeout = Timeout.InfiniteTimeSpan;
        await client.Completed((await client.PostAudit(Good, later: true)).Headers.Location!);
        var before = running.PeakMebibytes;
        var length = Math.Max(LongLine, 200_000_000);
        var watch = Stopwatch.StartNew();

        var posted = await client.SendAsync(Later(new Generated(async stream =>
        {
            await stream.WriteAsync(Good);
            var part = new byte[1_000_000];
            Array.Fill(part, (byte)'x');
            for (var sent = 0L; sent < length; sent += part.Length)
                await stream.WriteAsync(part);
            await stream.WriteAsync("\n"u8.ToArray());
            await stream.WriteAsync(Good);
        })));
        var audit = await client.Completed(posted.Headers.Location!);

        Assert.Equal((3, 2, 1), (audit["records"]!["read"].Number(), audit["records"]!["judged"].Number(), audit["records"]!["rejected"].Number()));
        var row = Assert.Single((await client.GetJson($"{posted.Headers.Location}/findings?outcome=rejected"))["items"]!.AsArray())!;
        Assert.Equal(2, row["line"].Number());
        Assert.InRange(running.PeakMebibytes - before, 0, 100);
        Console.WriteLine($"a line of {length:N0} bytes: {watch.Elapsed.TotalSeconds:0.0} s, peak memory {before} -> {running.PeakMebibytes} MiB");
        await StillAnswers(client);
    }

    /// <summary>Packed beforehand: a client that packs while it sends is slower than the server is patient, and meets a closed connection.</summary>
    private static readonly Lazy<byte[]> TwoGigabytes = new(() =>
    {
        var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            var zeros = new byte[1_000_000];
            for (var part = 0; part < 2000; part++)
                gzip.Write(zeros);
        }

        return packed.ToArray();
    });

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_packed_body_that_unpacks_to_gigabytes_is_refused_in_bounded_memory(bool later)
    {
        using var running = new RunningService(Loopback);
        using var client = await running.Listening();
        await StillAnswers(client);
        var before = running.PeakMebibytes;
        var bomb = new ByteArrayContent(TwoGigabytes.Value) { Headers = { ContentType = new MediaTypeHeaderValue(AuditCalls.Ndjson) } };
        bomb.Headers.ContentEncoding.Add("gzip");
        var request = new HttpRequestMessage(HttpMethod.Post, later ? "/v1/audits" : AuditCalls.AtOnce) { Content = bomb };
        Assert.Equal("/problems/audit-too-long", (await (await client.SendAsync(request)).Read(HttpStatusCode.RequestEntityTooLarge))["type"].Text());

        Assert.InRange(running.PeakMebibytes - before, 0, 100);
        Assert.Equal(0, (await client.GetJson("/v1/audits"))["total"].Number());
        await StillAnswers(client);
    }

    [Theory]
    [InlineData("/v1/audit-lines", "")]
    [InlineData("/v1/audits", "Idempotency-Key: gone\r\n")]
    public async Task Of_a_client_that_goes_in_the_middle_nothing_stays(string path, string headers)
    {
        using var running = new RunningService(Loopback);
        using var client = await running.Listening();
        for (var round = 0; round < 3; round++)
        {
            using var socket = new TcpClient();
            await socket.ConnectAsync(IPAddress.Loopback, client.BaseAddress!.Port);
            var stream = socket.GetStream();
            await stream.WriteAsync(AuditCalls.Utf8($"POST {path} HTTP/1.1\r\nHost: {client.BaseAddress.Authority}\r\nContent-Type: application/x-ndjson\r\n{headers}Content-Length: 100000000\r\n\r\n"));
            for (var record = 0; record < 300; record++)
                await stream.WriteAsync(Good);
            if (round == 1)
                socket.Client.LingerState = new LingerOption(enable: true, seconds: 0);
            socket.Close();
        }

        // The key is free again as soon as the service has noticed.
        for (var patience = 100; (await client.PostAudit(Good, later: true, key: "gone")).StatusCode == HttpStatusCode.Conflict && patience > 0; patience--)
            await Task.Delay(100);
        Assert.Equal(1, (await client.GetJson("/v1/audits"))["total"].Number());
        await StillAnswers(client);
    }

    /// <summary>A line of a chunked body (RFC 9112, section 7.1) that says a size which no number here holds.</summary>
    [Theory]
    [InlineData("/v1/evaluations", "application/json", "80000000")]
    [InlineData("/v1/evaluations", "application/json", "FFFFFFFFFFFFFFFF")]
    [InlineData("/v1/evaluations", "application/json", "nonsense")]
    [InlineData("/v1/audit-lines", "application/x-ndjson", "80000000")]
    public async Task A_chunk_of_an_impossible_size_is_the_callers_fault_and_not_logged(string path, string type, string size)
    {
        using var running = new RunningService(Loopback);
        using var client = await running.Listening();
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, client.BaseAddress!.Port);
        var stream = socket.GetStream();
        await stream.WriteAsync(AuditCalls.Utf8($"POST {path} HTTP/1.1\r\nHost: {client.BaseAddress.Authority}\r\nContent-Type: {type}\r\nTransfer-Encoding: chunked\r\n\r\n{size}\r\n"));
        using var answer = new StreamReader(stream);

        Assert.StartsWith("HTTP/1.1 400 ", await answer.ReadLineAsync(), StringComparison.Ordinal);
        await StillAnswers(client);
        Assert.Equal(0, await running.Terminated());
        Assert.DoesNotContain("fail:", running.Logged, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", running.Logged, StringComparison.Ordinal);
    }

    /// <summary>On a small file system that fills up while records arrive, while they are judged, and while a body is laid aside.</summary>
    [SmallDiskFact]
    public async Task With_the_disk_full_it_says_so_loses_nothing_and_goes_on_when_there_is_room()
    {
        using var disk = new SmallDisk(megabytes: 48);
        var ballast = Path.Combine(disk.Folder, "ballast");
        using var running = new RunningService(Loopback, $"--Store:Path={Path.Combine(disk.Folder, "c.db")}", "--Store:Create=true", "--Audits:Workers=1");
        using var client = await running.Listening();
        await StillAnswers(client);
        var month = AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 1000));
        var first = (await client.PostAudit(month, later: true)).Headers.Location!;

        Fill(ballast);
        for (var refused = 0; refused == 0;)
        {
            var response = await client.PostAudit(month, later: true);
            if (response.IsSuccessStatusCode)
                continue;
            refused++;
            Assert.Equal("/problems/store-unavailable", (await response.Read(HttpStatusCode.ServiceUnavailable))["type"].Text());
            Assert.NotNull(response.Headers.RetryAfter);
        }

        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/health/live")).StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await client.PostRecord(service.ExampleRecord)).StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await client.GetAsync("/health/ready")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await client.PostRecord(service.ExampleRecord, "?store=false")).StatusCode);

        File.Delete(ballast);
        Assert.Equal((1000, 800, 200), Counts(await client.Completed(first)));
        Assert.Equal((1000, 800, 200), Counts(await client.Completed((await client.PostAudit(month, later: true)).Headers.Location!)));
        await StillAnswers(client);

        // Sparse files take no room: only real bytes fill a disk.
        static void Fill(string file)
        {
            using var stream = File.Create(file);
            try
            {
                for (var part = new byte[65536]; ;)
                {
                    stream.Write(part);
                    stream.Flush(flushToDisk: true);
                }
            }
            catch (IOException)
            {
                // Full.
            }
        }

        static (int, int, int) Counts(JsonNode audit) => (audit["records"]!["read"].Number(), audit["records"]!["judged"].Number(), audit["records"]!["rejected"].Number());
    }

    [SmallDiskFact]
    public async Task Without_room_to_lay_a_body_aside_it_says_so()
    {
        using var disk = new SmallDisk(megabytes: 1);
        using var running = new RunningService(new Dictionary<string, string> { ["TMPDIR"] = disk.Folder }, Loopback);
        using var client = await running.Listening();

        var response = await client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 1000)));

        Assert.Equal("/problems/store-unavailable", (await response.Read(HttpStatusCode.ServiceUnavailable))["type"].Text());
        await StillAnswers(client);
    }

    private async Task StillAnswers(HttpClient client)
    {
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/health/ready")).StatusCode);
        Assert.Equal("pass", (await (await client.PostRecord(service.ExampleRecord, "?store=false")).Read())["outcome"].Text());
    }

    private static HttpRequestMessage Later(HttpContent content) => new(HttpMethod.Post, "/v1/audits") { Content = content };

    /// <summary>A body that is made while it is sent.</summary>
    private sealed class Generated : HttpContent
    {
        private readonly Func<Stream, Task> _write;

        public Generated(Func<Stream, Task> write)
        {
            _write = write;
            Headers.ContentType = new MediaTypeHeaderValue(AuditCalls.Ndjson);
        }

        protected override Task SerializeToStreamAsync(Stream stream, TransportContext? context) => _write(stream);

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}
