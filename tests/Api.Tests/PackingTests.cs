using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Text.Json.Nodes;
using ComplianceApi.Api.Requests;

namespace Api.Tests;

/// <summary>Bodies and answers that are packed on their way (RFC 9110, section 8.4; RFC 1952).</summary>
public sealed class PackingTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Theory]
    [InlineData("POST", "/v1/evaluations?store=false", 200)]
    [InlineData("PUT", "/v1/appliance-profiles/packed", 201)]
    [InlineData("POST", "/v1/calculations/coCo2Ratio", 200)]
    [InlineData("POST", "/v1/rule-changes/preview", 202)]
    public async Task Every_body_may_come_packed(string method, string path, int status)
    {
        var body = path switch
        {
            "/v1/appliance-profiles/packed" => """{"coPpmMax":50,"source":"invented instructions, page 4"}"""u8.ToArray(),
            "/v1/calculations/coCo2Ratio" => """{"coPpm":96,"co2Percent":9}"""u8.ToArray(),
            "/v1/rule-changes/preview" => """{"asOf":"2026-10-12"}"""u8.ToArray(),
            _ => service.ExampleRecord,
        };

        var answer = await Send(method, path, AuditCalls.Pack(body));

        Assert.Equal((HttpStatusCode)status, answer.StatusCode);
    }

    [Fact]
    public async Task A_record_is_kept_unpacked_and_read_to_its_last_member()
    {
        var record = service.ExampleRecord;
        byte[] packed = [.. AuditCalls.Pack(record[..1000]), .. AuditCalls.Pack(record[1000..2000]), .. AuditCalls.Pack(record[2000..])];

        var posted = await Send("POST", "/v1/evaluations", packed);

        Assert.Equal(HttpStatusCode.Created, posted.StatusCode);
        Assert.Equal(record, await _client.GetByteArrayAsync($"{posted.Headers.Location}/record"));
        byte[] three = [.. AuditCalls.Pack([.. OneLine(record), (byte)'\n']), .. AuditCalls.Pack("\n{}\n"u8.ToArray())];
        var audit = await _client.SendAsync(Packed("POST", AuditCalls.AtOnce, three, AuditCalls.Ndjson));
        Assert.Equal(2, (await audit.ReadLines())[^1]["summary"]!["records"]!["read"].Number());
    }

    [Theory]
    [InlineData("cut off")]
    [InlineData("cut off in its second member")]
    [InlineData("more behind it")]
    [InlineData("not packed")]
    public async Task What_cannot_be_unpacked_to_its_end_is_refused(string what)
    {
        using var running = new RunningService("--urls=http://127.0.0.1:0");
        using var alone = await running.Listening();
        var packed = AuditCalls.Pack(service.ExampleRecord);
        byte[] body = what switch
        {
            "cut off" => packed[..^20],
            "cut off in its second member" => [.. packed, .. AuditCalls.Pack(" \n \n "u8.ToArray())[..^9]],
            "more behind it" => [.. packed, .. "{}"u8],
            _ => service.ExampleRecord,
        };

        foreach (var client in new[] { _client, alone })
        {
            var problem = await (await client.SendAsync(Packed("POST", "/v1/evaluations", body, "application/json"))).Read(HttpStatusCode.BadRequest);
            Assert.Equal(["notGzip"], problem["errors"].Texts("code"));
            problem = await (await client.SendAsync(Packed("POST", AuditCalls.AtOnce, body, AuditCalls.Ndjson))).Read(HttpStatusCode.BadRequest);
            Assert.Equal(["notGzip"], problem["errors"].Texts("code"));
        }
    }

    [Theory]
    [InlineData(0, 200)]
    [InlineData(1, 413)]
    [InlineData(500_000_000, 413)]
    public async Task The_bound_holds_unpacked(int beyond, int status)
    {
        var packed = new MemoryStream();
        await using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            await gzip.WriteAsync(service.ExampleRecord);
            var blanks = new byte[1_000_000];
            Array.Fill(blanks, (byte)' ');
            for (var left = JsonBody.MaxBytes - service.ExampleRecord.Length + beyond; left > 0; left -= blanks.Length)
                await gzip.WriteAsync(blanks.AsMemory(0, Math.Min(left, blanks.Length)));
        }

        Assert.InRange(packed.Length, 1, JsonBody.MaxBytes);
        var answer = await Send("POST", "/v1/evaluations?store=false", packed.ToArray());

        Assert.Equal((HttpStatusCode)status, answer.StatusCode);
    }

    [Theory]
    [InlineData("gzip", "gzip")]
    [InlineData("br", "br")]
    [InlineData("gzip, br;q=0.5", "gzip")]
    [InlineData("br;q=0, gzip", "gzip")]
    [InlineData("identity", null)]
    [InlineData(null, null)]
    public async Task An_answer_is_packed_as_the_caller_asks(string? accept, string? coding)
    {
        var location = (await _client.PostRecord(service.ExampleRecord)).Headers.Location!;
        var client = service.CreateDefaultClient();
        foreach (var path in new[] { $"{location}?include=all", "/openapi/v1.json", $"/evaluations/{location.ToString().Split('/')[^1]}", "/assets/pages.css" })
        {
            var plain = await client.GetByteArrayAsync(path);
            var answer = await client.SendAsync(Get(path, accept));

            Assert.Equal(coding, answer.Content.Headers.ContentEncoding.SingleOrDefault());
            Assert.Equal(accept is null ? [] : ["Accept-Encoding"], answer.Headers.Vary);
            var body = await answer.Content.ReadAsByteArrayAsync();
            Assert.Equal(plain, await Unpack(body, coding));
            if (coding is not null)
                Assert.InRange(body.Length, 1, plain.Length / 2);
        }
    }

    [Fact]
    public async Task A_packed_answer_has_a_tag_of_its_own_and_is_not_sent_again()
    {
        var client = service.CreateDefaultClient();
        var path = (await _client.PostRecord(service.ExampleRecord)).Headers.Location!.ToString();
        var tags = new List<string>();
        foreach (var accept in new[] { "identity", "gzip", "br" })
        {
            var tag = (await client.SendAsync(Get(path, accept))).Headers.ETag!;
            Assert.False(tag.IsWeak);
            tags.Add(tag.Tag);
            var again = Get(path, accept);
            again.Headers.IfNoneMatch.Add(tag);
            var unchanged = await client.SendAsync(again);
            Assert.Equal((HttpStatusCode.NotModified, tag), (unchanged.StatusCode, unchanged.Headers.ETag));
        }

        Assert.Equal(3, tags.Distinct().Count());
    }

    [Fact]
    public async Task Who_has_read_a_profile_packed_may_save_upon_it()
    {
        var client = service.CreateDefaultClient();
        const string Path = "/v1/appliance-profiles/read-packed";
        Assert.Equal(HttpStatusCode.Created, (await client.PutAsync(Path, Calls.Json("{}"))).StatusCode);
        var read = await client.SendAsync(Get(Path, "gzip"));
        Assert.Equal(["gzip"], read.Content.Headers.ContentEncoding);

        Task<HttpResponseMessage> Save() => client.SendAsync(new(HttpMethod.Put, Path) { Content = Calls.Json("{}"), Headers = { IfMatch = { read.Headers.ETag! } } });
        Assert.Equal(HttpStatusCode.OK, (await Save()).StatusCode);
        Assert.Equal(HttpStatusCode.PreconditionFailed, (await Save()).StatusCode);
    }

    private static byte[] OneLine(byte[] record) => AuditCalls.Utf8(JsonNode.Parse(record)!.ToJsonString());

    private Task<HttpResponseMessage> Send(string method, string path, byte[] packed) => _client.SendAsync(Packed(method, path, packed, "application/json"));

    private static HttpRequestMessage Packed(string method, string path, byte[] packed, string mediaType)
    {
        var content = new ByteArrayContent(packed) { Headers = { ContentType = new MediaTypeHeaderValue(mediaType), ContentEncoding = { "gzip" } } };
        return new HttpRequestMessage(new HttpMethod(method), path) { Content = content };
    }

    private static HttpRequestMessage Get(string path, string? accept)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, path);
        if (accept is not null)
            request.Headers.TryAddWithoutValidation("Accept-Encoding", accept);
        return request;
    }

    private static async Task<byte[]> Unpack(byte[] body, string? coding)
    {
        var plain = new MemoryStream();
        await using Stream unpacking = coding switch
        {
            "gzip" => new GZipStream(new MemoryStream(body), CompressionMode.Decompress),
            "br" => new BrotliStream(new MemoryStream(body), CompressionMode.Decompress),
            _ => new MemoryStream(body),
        };
        await unpacking.CopyToAsync(plain);
        return plain.ToArray();
    }
}
