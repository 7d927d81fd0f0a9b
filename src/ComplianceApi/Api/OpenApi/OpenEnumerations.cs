using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace ComplianceApi.Api.OpenApi;

/// <summary>
/// Lets the words of answers grow: a generated client that has a closed list of them throws a whole answer away over one that it does not know. So
/// a word of an answer is a text, with those of today as x-extensible-enum. What is sent keeps its closed list: there an unknown word is refused.
/// </summary>
internal sealed class OpenEnumerations : IDocumentFilter
{
    private const string Extension = "x-extensible-enum";
    private const int Longest = 100;

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var known = swaggerDoc.Components!.Schemas!;
        var sent = new HashSet<string>(StringComparer.Ordinal);
        foreach (var operation in swaggerDoc.Paths.Values.SelectMany(path => path.Operations!.Values))
        {
            foreach (var schema in operation.Parameters?.Select(parameter => parameter.Schema) ?? [])
                Follow(schema, known, sent);
            foreach (var content in operation.RequestBody?.Content?.Values ?? [])
                Follow(content.Schema, known, sent);
        }

        foreach (var (_, schema) in known.Where(one => !sent.Contains(one.Key)).ToList())
        {
            if (schema is OpenApiSchema own)
                Open(own, known);
        }

        swaggerDoc.Components.Schemas = new SortedDictionary<string, IOpenApiSchema>(known, StringComparer.Ordinal);
    }

    /// <summary>Notes all that a schema refers to.</summary>
    private static void Follow(IOpenApiSchema? schema, IDictionary<string, IOpenApiSchema> known, HashSet<string> found)
    {
        if (schema is OpenApiSchemaReference { Reference.Id: { } name })
        {
            if (found.Add(name))
                Follow(known[name], known, found);
            return;
        }

        foreach (var part in schema?.Properties?.Values ?? [])
            Follow(part, known, found);
        if (schema?.Items is { } items)
            Follow(items, known, found);
        if (schema?.AdditionalProperties is { } values)
            Follow(values, known, found);
    }

    private static void Open(OpenApiSchema schema, IDictionary<string, IOpenApiSchema> known)
    {
        if (schema.Enum is { Count: > 0 } words)
        {
            (schema.Enum, schema.MaxLength) = (null, Longest);
            schema.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
            schema.Extensions[Extension] = new JsonNodeExtension(new JsonArray([.. words.Select(word => word.DeepClone())]));
        }

        foreach (var (name, member) in schema.Properties?.ToList() ?? [])
            schema.Properties![name] = Opened(member, known);
        schema.Items = schema.Items is { } items ? Opened(items, known) : null;
        schema.AdditionalProperties = schema.AdditionalProperties is { } values ? Opened(values, known) : null;
    }

    /// <summary>A part of an answer: what it shares with what is sent has an open twin, and stays closed there.</summary>
    private static IOpenApiSchema Opened(IOpenApiSchema part, IDictionary<string, IOpenApiSchema> known)
    {
        if (part is OpenApiSchema own)
            Open(own, known);
        if (part is not OpenApiSchemaReference { Reference.Id: { } name } reference || known[name] is not OpenApiSchema { Enum.Count: > 0 } shared)
            return part;

        var twin = $"{name}InAnswers";
        if (!known.ContainsKey(twin))
        {
            known[twin] = new OpenApiSchema { Type = JsonSchemaType.String, Enum = shared.Enum, Description = shared.Description };
            Open((OpenApiSchema)known[twin], known);
        }

        return new OpenApiSchemaReference(twin) { Description = reference.Description };
    }
}
