using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace Api.Tests.Contract;

/// <summary>The committed OpenAPI 3.1 document, and what an exchange has to be like by it. Bodies are checked by JsonSchema.Net.</summary>
internal sealed class PublishedContract
{
    private static readonly EvaluationOptions Strictly = new() { OutputFormat = OutputFormat.List, RequireFormatValidation = true };
    private readonly ConcurrentDictionary<string, JsonSchema> _schemas = new(StringComparer.Ordinal);
    private readonly string _definitions;

    private PublishedContract(JsonNode document)
    {
        Document = document;
        var schemas = document["components"]!["schemas"]!.DeepClone();
        WithoutExtensions(schemas);
        _definitions = AsDefinitions(schemas);
        Operations =
        [
            .. document["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject().Select(operation =>
                new Operation(path.Key, operation.Key.ToUpperInvariant(), operation.Value!.AsObject()))),
        ];
    }

    public static PublishedContract V1 { get; } = new(JsonNode.Parse(File.ReadAllText(Path.Combine(Repository.Root, "openapi", "v1.json")))!);

    public JsonNode Document { get; }

    public IReadOnlyList<Operation> Operations { get; }

    public JsonNode Component(string name) => Document["components"]!["schemas"]![name]!;

    /// <summary>The operation that a request is for; the one with the fewest parameters where several paths fit. Null for none.</summary>
    public Operation? Find(string method, string path) => Operations
        .Where(operation => operation.Method == method && operation.Fits(path))
        .MinBy(operation => operation.Path.Count(c => c == '{'));

    /// <summary>What is wrong with an instance by a schema of the document; empty when nothing is.</summary>
    public IReadOnlyList<string> Faults(JsonNode schema, JsonNode? instance)
    {
        var compiled = _schemas.GetOrAdd(schema.ToJsonString(), text =>
        {
            var own = JsonNode.Parse(text);
            WithoutExtensions(own);
            return JsonSchema.FromText($$"""{"allOf":[{{AsDefinitions(own)}}],"$defs":{{_definitions}}}""");
        });
        var result = compiled.Evaluate(JsonSerializer.SerializeToElement(instance), Strictly);
        return result.IsValid
            ? []
            : [.. result.Details!.Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"))];
    }

    private static string AsDefinitions(JsonNode? node) => node!.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);

    private static void WithoutExtensions(JsonNode? node)
    {
        if (node is JsonObject members)
        {
            // Open for a client, which may meet words of a later version; of this version there are no others.
            if (members["x-extensible-enum"] is { } words)
                members["enum"] = words.DeepClone();
            foreach (var name in members.Select(member => member.Key).Where(name => name.StartsWith("x-", StringComparison.Ordinal)).ToList())
                members.Remove(name);
            foreach (var (_, value) in members)
                WithoutExtensions(value);
        }
        else if (node is JsonArray items)
        {
            foreach (var item in items)
                WithoutExtensions(item);
        }
    }
}

/// <summary>One operation of the document.</summary>
internal sealed record Operation(string Path, string Method, JsonObject Node)
{
    /// <summary>The path with what <paramref name="valueOf"/> gives for the name of each of its parameters, else with values that are nobody's id.</summary>
    public string PathWith(Func<string, string?>? valueOf = null) => string.Join('/', Path.Split('/').Select(part =>
        !part.StartsWith('{') ? part : valueOf?.Invoke(part[1..^1]) ?? part switch { "{name}" => "coCo2Ratio", "{line}" => "1", _ => "x" }));

    private readonly string[] _parts = Path.Split('/');

    public string Id => Node["operationId"].Text();

    public bool IsStrict => Path.StartsWith("/v1/", StringComparison.Ordinal);

    public bool NeedsKey => Node["security"]!.AsArray().Count > 0;

    /// <summary>The scope that a key must have; null for none in particular.</summary>
    public string? Scope => Node["x-scope"]?.GetValue<string>();

    public IEnumerable<JsonNode> Parameters => Node["parameters"]?.AsArray().Select(parameter => parameter!) ?? [];

    public JsonObject Responses => Node["responses"]!.AsObject();

    /// <summary>The schemas of the body by media type; null without a body.</summary>
    public JsonObject? Body => Node["requestBody"]?["content"]?.AsObject();

    public JsonNode? JsonBody => Body?["application/json"]?["schema"];

    /// <summary>The codes by which the operation refuses what its schema allows.</summary>
    public IReadOnlyList<string> BeyondSchema { get; } = [.. Node["x-beyond-schema"]?.AsArray().Select(code => code.Text()) ?? []];

    /// <summary>Whether faults of single records are reported in the answer.</summary>
    public bool ReportsFaults => Node["x-faults-in-answer"] is not null;

    public bool Fits(string path)
    {
        var parts = path.Split('/');
        return parts.Length == _parts.Length && parts.Zip(_parts).All(pair => pair.Second.StartsWith('{') ? pair.First.Length > 0 : pair.First == pair.Second);
    }

    public override string ToString() => $"{Method} {Path}";
}

/// <summary>The folder of the repository.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "ComplianceApi.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
