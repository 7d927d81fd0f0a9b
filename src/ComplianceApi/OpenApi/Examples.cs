using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;

namespace ComplianceApi;

/// <summary>
/// Answers that the service has given, for the documents. They are kept with the requests that they answer; the tests send each request
/// again and demand the same answer.
/// </summary>
internal sealed class Examples
{
    private readonly JsonArray _all;

    private Examples(JsonArray all) => _all = all;

    public static Examples Shipped { get; } = new(JsonNode.Parse(typeof(Examples).Assembly.GetManifestResourceStream("examples.json")!)!.AsArray());

    /// <summary>The examples of one operation's answers of one status; null without any.</summary>
    public Dictionary<string, IOpenApiExample>? Of(string operationId, int status)
    {
        var found = _all
            .Where(one => one!["operation"]!.GetValue<string>() == operationId && one["status"]!.GetValue<int>() == status && one["answer"] is not null)
            .Select((one, index) => KeyValuePair.Create<string, IOpenApiExample>(
                string.Create(CultureInfo.InvariantCulture, $"example{index + 1}"),
                new OpenApiExample { Summary = SummaryOf(one!), Value = one!["answer"]!.DeepClone() }))
            .ToDictionary(StringComparer.Ordinal);
        return found.Count > 0 ? found : null;
    }

    /// <summary>The bodies of one operation's requests that were answered with success; null without any.</summary>
    public Dictionary<string, IOpenApiExample>? OfRequests(string operationId)
    {
        var found = _all
            .Where(one => one!["operation"]!.GetValue<string>() == operationId && one["status"]!.GetValue<int>() < 300 && one["body"] is JsonObject)
            .Select((one, index) => KeyValuePair.Create<string, IOpenApiExample>(
                string.Create(CultureInfo.InvariantCulture, $"example{index + 1}"),
                new OpenApiExample { Summary = one!["what"]!.GetValue<string>(), Value = one["body"]!.DeepClone() }))
            .ToDictionary(StringComparer.Ordinal);
        return found.Count > 0 ? found : null;
    }

    private static string SummaryOf(JsonNode example) => $"{example["what"]!.GetValue<string>()}: {example["request"]!.GetValue<string>()} (of each list the first five entries)";
}
