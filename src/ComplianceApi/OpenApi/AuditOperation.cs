using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace ComplianceApi;

/// <summary>Documents the route whose body is many records in one of three forms.</summary>
internal static class AuditOperation
{
    public static void Describe(OpenApiOperation operation, SchemaRepository known)
    {
        DescribeLines((OpenApiMediaType)operation.Responses!["200"].Content![AuditAnswer.MediaType], known);
        var record = new OpenApiSchemaReference(nameof(ServiceRecords.ServiceRecord));
        operation.RequestBody = new OpenApiRequestBody
        {
            Required = true,
            Description = "Many service records. A record with faults does not make the body faulty: it is reported under its line, and the others are judged.",
            Content = new Dictionary<string, IOpenApiMediaType>(StringComparer.Ordinal)
            {
                ["application/json"] = new OpenApiMediaType { Schema = new OpenApiSchema { Type = JsonSchemaType.Array, Items = record, MinItems = 1, MaxItems = int.MaxValue } },
                ["application/x-ndjson"] = new OpenApiMediaType { Schema = Text("One record a line.", int.MaxValue) },
                ["text/csv"] = new OpenApiMediaType { Schema = Text("Member paths as the header, one record a row.", int.MaxValue) },
            },
        };
        operation.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
        operation.Extensions["x-faults-in-answer"] = new JsonNodeExtension(JsonValue.Create(true));
        operation.Parameters ??= [];
        Add("Prefer", "respond-async: store the records and judge them later.");
        Add("Idempotency-Key", "With respond-async: a repeated request with this key and the same body gives the audit of the first.");

        void Add(string name, string description) => operation.Parameters.Add(
            new OpenApiParameter { Name = name, In = ParameterLocation.Header, Description = description, Schema = Text(description: null, 200) });
    }

    /// <summary>The lines of the answer: one for each record, and the last, which has only the summary.</summary>
    private static void DescribeLines(OpenApiMediaType answer, SchemaRepository known)
    {
        var line = (OpenApiSchema)known.Schemas[((OpenApiSchemaReference)answer.Schema!).Reference.Id!];
        line.Properties!["summary"] = known.Schemas[nameof(Audits.AuditStatus)].Properties!["summary"];
        line.Required!.Clear();
        line.Description += " The last line has only the summary.";
    }

    private static OpenApiSchema Text(string? description, int longest) => new() { Type = JsonSchemaType.String, Description = description, MaxLength = longest };
}
