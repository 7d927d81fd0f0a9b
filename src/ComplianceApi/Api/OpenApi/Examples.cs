using System.Globalization;
using System.Text.Json.Nodes;
using ComplianceApi.Api.Requests;
using Findings;
using Microsoft.OpenApi;

namespace ComplianceApi.Api.OpenApi;

/// <summary>
/// Answers that the service has given, for the documents. They are kept with the requests that they answer; the tests send each request
/// again and demand the same answer.
/// </summary>
internal sealed class Examples
{
    private const string Json = "application/json";
    private readonly JsonArray _all;

    private Examples(JsonArray all) => _all = all;

    public static Examples Shipped { get; } = new(JsonNode.Parse(typeof(Examples).Assembly.GetManifestResourceStream("examples.json")!)!.AsArray());

    /// <summary>The examples of one operation's answers of one status and media type, any kind of JSON being the same; null without any.</summary>
    public Dictionary<string, IOpenApiExample>? Of(string operationId, int status, string mediaType) => Named(
        _all.Where(one => Text(one, "operation") == operationId && one!["status"]!.GetValue<int>() == status && one["answer"] is not null)
            .Where(one => (Text(one, "answerType") ?? Json) == (mediaType.EndsWith("+json", StringComparison.Ordinal) ? Json : mediaType))
            .Select(one => (SummaryOf(one!), mediaType == RowStream.LinesMediaType ? JsonValue.Create(one!["answer"]!.ToJsonString(EvaluationJson.Wire.Options) + "\n") : one!["answer"]!)));

    /// <summary>The bodies, in one media type, of one operation's requests that were answered with success; null without any.</summary>
    public Dictionary<string, IOpenApiExample>? OfRequests(string operationId, string mediaType) => Named(
        _all.Where(one => Text(one, "operation") == operationId && one!["status"]!.GetValue<int>() < 300 && (Text(one, "mediaType") ?? Json) == mediaType)
            .Select(one => (Text(one, "what")!, Body: one!["text"] ?? one["body"]))
            .Where(one => one.Body is JsonObject or JsonArray || mediaType != Json)
            .DistinctBy(one => one.Body!.ToJsonString(), StringComparer.Ordinal)
            .Select(one => (one.Item1, one.Body!)));

    private static Dictionary<string, IOpenApiExample>? Named(IEnumerable<(string Summary, JsonNode Value)> examples)
    {
        var named = examples
            .Select((one, index) => KeyValuePair.Create<string, IOpenApiExample>(
                string.Create(CultureInfo.InvariantCulture, $"example{index + 1}"),
                new OpenApiExample { Summary = one.Summary, Value = one.Value.DeepClone() }))
            .ToDictionary(StringComparer.Ordinal);
        return named.Count > 0 ? named : null;
    }

    private static string SummaryOf(JsonNode example)
    {
        var headers = example["headers"]?.AsObject().Select(header => $"{header.Key}: {header.Value}") ?? [];
        return $"{Text(example, "what")}: {string.Join(", ", [Text(example, "request"), .. headers])} (of each list the first five entries)";
    }

    private static string? Text(JsonNode? example, string member) => example![member]?.GetValue<string>();
}
