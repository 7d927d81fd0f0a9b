using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>Audits as the tests post and follow them.</summary>
internal static class AuditCalls
{
    public const string Ndjson = "application/x-ndjson";

    public const string AtOnce = "/v1/audit-lines";

    /// <summary>The example record with ids of its own: clean, with an advisory, dangerous, unusable in turn.</summary>
    public static IEnumerable<byte[]> Month(byte[] example, int records) => Enumerable.Range(1, records).Select(number => example.With(record =>
    {
        record["recordId"] = $"M-{number}";
        record["combustion"]!["readings"]![0]!["coPpm"] = number % 5 == 1 ? 400 : number % 5 == 2 ? 2000 : 96;
        if (number % 5 == 3)
            record["appliance"]!["fuel"] = "coal";
    }));

    public static byte[] Lines(IEnumerable<byte[]> records) => [.. records.SelectMany(record => record.Append((byte)'\n'))];

    public static async Task<HttpResponseMessage> PostAudit(
        this HttpClient client, byte[] body, string mediaType = Ndjson, bool later = false, string? key = null, bool packed = false, string query = "")
    {
        var content = new ByteArrayContent(packed ? Pack(body) : body) { Headers = { ContentType = new MediaTypeHeaderValue(mediaType) } };
        if (packed)
            content.Headers.ContentEncoding.Add("gzip");
        var request = new HttpRequestMessage(HttpMethod.Post, $"{(later ? "/v1/audits" : AtOnce)}{query}") { Content = content };
        if (key is not null)
            request.Headers.Add("Idempotency-Key", key);
        return await client.SendAsync(request);
    }

    public static async Task<JsonNode[]> ReadLines(this HttpResponseMessage response)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.OK, text);
        return [.. text.TrimEnd('\n').Split('\n').Select(line => JsonNode.Parse(line)!)];
    }

    public static async Task<JsonNode> Completed(this HttpClient client, Uri audit)
    {
        for (var patience = 600; patience > 0; patience--)
        {
            var status = await client.GetJson(audit.ToString());
            if (status["state"].Text() is "completed" or "failed" or "cancelled")
                return status;
            await Task.Delay(100);
        }

        throw new TimeoutException("The audit does not end.");
    }

    /// <summary>All that an audit or a preview says: its rows, and its summary.</summary>
    public static async Task<string> Said(this HttpClient client, Uri job, string rows = "findings") =>
        await client.GetStringAsync($"{job}/{rows}.ndjson") + (await client.GetJson(job.ToString()))["summary"]!.ToJsonString();

    public static int Number(this JsonNode? node) => node!.GetValue<int>();

    public static byte[] Pack(byte[] bytes, CompressionLevel level = CompressionLevel.Fastest)
    {
        var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, level, leaveOpen: true))
            gzip.Write(bytes);
        return packed.ToArray();
    }

    public static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
