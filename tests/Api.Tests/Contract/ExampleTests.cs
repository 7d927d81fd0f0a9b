using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Jobs.Workers;
using Microsoft.Extensions.DependencyInjection;
using Visits.Judging;

namespace Api.Tests.Contract;

/// <summary>The answers that the document shows are answers that the service gives.</summary>
public sealed partial class ExampleTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const string SomeId = "01994825-1a00-7000-8000-000000000001";
    private const string SomeTrace = "0af7651916cd43dd8448eb211c80319c";
    private const int MostShown = 5;
    private static readonly string File = Path.Combine(Repository.Root, "src", "ComplianceApi", "Api", "OpenApi", "examples.json");
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Of the service that answers: the other one would begin to judge if it were asked for its own.</summary>
    private byte[] _exampleRecord = [];

    [Fact]
    public async Task Every_shown_answer_is_given_again()
    {
        // Nobody judges stored audits but this test, so that it is known how far each is.
        await using var own = service.WithWebHostBuilder(builder => builder.UseSetting("Audits:Workers", "0"));
        var client = own.CreateDefaultClient(new ContractHandler());
        var worker = own.Services.GetRequiredService<AuditWorker>();
        _exampleRecord = own.Services.GetRequiredService<ComplianceEngine>().Catalogue.ExampleRecord;
        var examples = JsonNode.Parse(await System.IO.File.ReadAllTextAsync(File))!.AsArray();
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var example in examples)
        {
            var (method, path) = example!["request"].Text().Split(' ') is [var verb, var target] ? (verb, target) : throw new FormatException(example.ToJsonString());
            Assert.Equal(example["operation"].Text(), PublishedContract.V1.Find(method, path.Split('?')[0])?.Id);
            while (method == "GET" && (path.Contains("{auditId}", StringComparison.Ordinal) || path.Contains("{previewId}", StringComparison.Ordinal)) && await worker.RunOneAsync(CancellationToken.None))
            {
            }

            var response = await client.SendAsync(RequestOf(example, method, ids.Aggregate(path, (with, id) => with.Replace($"{{{id.Key}}}", id.Value, StringComparison.Ordinal))));

            Assert.Equal((example["request"].Text(), example["status"]!.GetValue<int>()), (example["request"].Text(), (int)response.StatusCode));
            var answer = AnswerOf(example, Generalized(await response.Content.ReadAsStringAsync()));
            if (response.Headers.Location?.ToString().Split('/') is [_, _, .., var collection, var id])
            {
                var name = collection switch { "audits" => "auditId", "preview" => "previewId", _ => "evaluationId" };
                ids[name] = name == "evaluationId" ? ids.GetValueOrDefault(name, id) : id;
            }

            if (Environment.GetEnvironmentVariable("REWRITE_OPENAPI") == "1")
                example["answer"] = answer;
            Assert.True(JsonNode.DeepEquals(answer, example["answer"]), $"{example["request"]} is answered otherwise: run tests/rewrite and look at the difference.");
        }

        if (Environment.GetEnvironmentVariable("REWRITE_OPENAPI") == "1")
            await System.IO.File.WriteAllTextAsync(File, examples.ToJsonString(Readable) + "\n");
    }

    /// <summary>JSON, one line of many, or the first rows of a table.</summary>
    private static JsonNode AnswerOf(JsonNode example, string answer) => example["answerType"]?.Text() switch
    {
        null => Cut(JsonNode.Parse(answer)!),
        "application/x-ndjson" => Cut(JsonNode.Parse(answer.Split('\n')[example["answerLine"]!.GetValue<int>() - 1])!),
        _ => JsonValue.Create(string.Join('\n', answer.Split('\n').Take(MostShown)) + "\n"),
    };

    private HttpRequestMessage RequestOf(JsonNode example, string method, string path)
    {
        var request = new HttpRequestMessage(new HttpMethod(method), path) { Content = BodyOf(example) };
        foreach (var (name, value) in example["headers"]?.AsObject() ?? [])
            request.Headers.Add(name, value.Text());
        return request;
    }

    /// <summary>What changes from call to call, or with every changed rule, stands as some value of its form.</summary>
    private static string Generalized(string answer)
    {
        var calls = Trace.Replace(Id.Replace(answer, SomeId), $"\"traceId\":\"{SomeTrace}\"");
        return RuleSetHash.Replace(calls, match => $"\"{match.Groups["member"].Value}\":\"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(match.Groups["member"].Value)))}\"");
    }

    /// <summary>An example shows the form: of a long list the first entries, as the document says.</summary>
    private static JsonNode Cut(JsonNode node)
    {
        if (node is JsonArray list)
        {
            while (list.Count > MostShown)
                list.RemoveAt(MostShown);
        }

        foreach (var child in node is JsonArray items ? items.ToList() : node is JsonObject members ? [.. members.Select(member => member.Value)] : [])
        {
            if (child is not null)
                Cut(child);
        }

        return node;
    }

    private ByteArrayContent? BodyOf(JsonNode example)
    {
        var bytes = example["text"] is { } text ? Encoding.UTF8.GetBytes(text.Text())
            : example["body"] is JsonValue ? _exampleRecord
            : example["body"] is { } body ? Encoding.UTF8.GetBytes(body.ToJsonString())
            : null;
        return bytes is null ? null : new ByteArrayContent(bytes) { Headers = { ContentType = new MediaTypeHeaderValue(example["mediaType"]?.Text() ?? "application/json") } };
    }

    [GeneratedRegex("[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Id { get; }

    [GeneratedRegex("\"traceId\":\"[0-9a-f]{32}\"", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Trace { get; }

    [GeneratedRegex("\"(?<member>lawHash|codeHash|resultHash|inForce|candidate)\":\"[0-9a-f]{64}\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex RuleSetHash { get; }
}
