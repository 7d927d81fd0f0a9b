using System.Text.Json;
using System.Text.Json.Nodes;

namespace Api.Tests.Contract;

/// <summary>Holds every exchange of a test against the published document, and fails the call that breaks it.</summary>
internal sealed class ContractHandler : DelegatingHandler
{
    /// <summary>Documented headers that not every answer has.</summary>
    private static readonly string[] SometimesAbsent = ["Link", "Sunset", "RateLimit", "RateLimit-Policy"];

    /// <summary>What a schema cannot say, as the document lists it.</summary>
    private static readonly string[] BeyondSchemas = ["outOfOrder", "boundsCrossed", "oneOnly", "duplicateItem", "unknownReference", "otherAppliance", "reasonNeeded", "notYet", "notExact", "moreFaults"];

    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var sent = request.Content is null ? null : await request.Content.ReadAsByteArrayAsync(cancellationToken);
        var response = await base.SendAsync(request, cancellationToken);

        // By the document, the server itself answers what reaches no route.
        if ((int)response.StatusCode is 400 or 414 or 431 && response.Content.Headers.ContentLength == 0)
            return response;

        var operation = PublishedContract.V1.Find(request.Method.Method, request.RequestUri!.AbsolutePath);
        var faults = operation is null ? FaultsOfUndocumented(request, response) : await FaultsOf(operation, request, sent, response);
        return faults.Count == 0
            ? response
            : throw new ContractException($"{request.Method} {request.RequestUri!.AbsolutePath} -> {(int)response.StatusCode} breaks the contract: {string.Join("; ", faults.Take(10))}");
    }

    private static List<string> FaultsOfUndocumented(HttpRequestMessage request, HttpResponseMessage response) =>
        request.RequestUri!.AbsolutePath is var path && (path.StartsWith("/openapi/", StringComparison.Ordinal) || path.StartsWith("/docs", StringComparison.Ordinal)) || (int)response.StatusCode >= 400
            ? []
            : ["no such operation is documented"];

    private static async Task<List<string>> FaultsOf(Operation operation, HttpRequestMessage request, byte[]? sent, HttpResponseMessage response)
    {
        var faults = new List<string>();
        var status = ((int)response.StatusCode).ToString(System.Globalization.CultureInfo.InvariantCulture);
        if (operation.Responses[status] is not { } documented)
            return [$"the status {status} is not documented for {operation.Id}"];

        foreach (var (name, _) in documented["headers"]?.AsObject() ?? [])
        {
            if (!SometimesAbsent.Contains(name) && (name, status) != ("Retry-After", "200") && !response.Headers.Contains(name))
                faults.Add($"the header {name} is absent");
        }

        var body = await response.Content.ReadAsByteArrayAsync();
        var mediaType = response.Content.Headers.ContentType?.MediaType;
        JsonNode? answer = null;
        if (documented["content"]?.AsObject() is not { } contents)
        {
            if (body.Length > 0)
                faults.Add($"a body of {body.Length} bytes is not documented");
        }
        else if (mediaType is null || contents[mediaType] is not { } content)
        {
            faults.Add($"the media type {mediaType} is not documented");
        }
        else if (mediaType == "application/x-ndjson")
        {
            foreach (var line in System.Text.Encoding.UTF8.GetString(body).Split('\n', StringSplitOptions.RemoveEmptyEntries))
                faults.AddRange(PublishedContract.V1.Faults(content["x-lines"]!, JsonNode.Parse(line)));
        }
        else if (mediaType.EndsWith("json", StringComparison.Ordinal))
        {
            answer = JsonNode.Parse(body.AsSpan().StartsWith("\uFEFF"u8) ? body.AsSpan(3) : body);
            faults.AddRange(PublishedContract.V1.Faults(content["schema"]!, answer));
        }

        else
        {
            faults.AddRange(PublishedContract.V1.Faults(content["schema"]!, JsonValue.Create(System.Text.Encoding.UTF8.GetString(body))));
        }

        if (operation.JsonBody is { } schema && request.Content is { Headers: { ContentType.MediaType: "application/json", ContentEncoding.Count: 0 } })
            faults.AddRange(FaultsOfVerdict(operation, schema, sent!, response, answer));
        return faults;
    }

    /// <summary>What the schema allows is not refused for its content, and what it forbids is not accepted; null is read as absent.</summary>
    private static IEnumerable<string> FaultsOfVerdict(Operation operation, JsonNode schema, byte[] sent, HttpResponseMessage response, JsonNode? answer)
    {
        if (!response.IsSuccessStatusCode && (int)response.StatusCode is not 422)
            yield break;

        IReadOnlyList<string> found;
        try
        {
            var body = JsonNode.Parse(sent.AsSpan().StartsWith("\uFEFF"u8) ? sent.AsSpan(3) : sent);
            WithoutNulls(body);
            found = PublishedContract.V1.Faults(schema, body);
        }
        catch (Exception fault) when (fault is JsonException or ArgumentException or InvalidOperationException)
        {
            found = [fault.Message];
        }

        if (response.IsSuccessStatusCode && found.Count > 0 && !operation.ReportsFaults)
            yield return "accepted what the document forbids: " + string.Join(", ", found.Take(3));
        else if (!response.IsSuccessStatusCode && found.Count == 0 && answer?["errors"] is JsonArray errors && errors.Texts("code").Any(code => !BeyondSchemas.Contains(code) && !operation.BeyondSchema.Contains(code)))
            yield return "refused what the document allows: " + errors.ToJsonString();
    }

    private static void WithoutNulls(JsonNode? node)
    {
        if (node is JsonObject members)
        {
            foreach (var name in members.Where(member => member.Value is null).Select(member => member.Key).ToList())
                members.Remove(name);
            foreach (var (_, value) in members)
                WithoutNulls(value);
        }
        else if (node is JsonArray items)
        {
            foreach (var item in items)
                WithoutNulls(item);
        }
    }
}

/// <summary>An exchange is not as the document says.</summary>
internal sealed class ContractException(string message) : Exception(message);
