using System.Text.Json.Nodes;
using ComplianceApi.Api.OpenApi;
using Jobs;
using Microsoft.OpenApi;
using Storage;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace ComplianceApi.Api.Audits;

/// <summary>Documents a route whose body is many records in one of three forms.</summary>
/// <param name="IsStored">Whether they are stored and judged later; else they are answered at once.</param>
internal sealed record AuditOperation(bool IsStored) : IOperationDetail
{
    private string Limits => IsStored
        ? $"At most {AuditReception.MostBytes >> 30} GiB unpacked; the bound of the schema is the largest that clients read."
        : $"At most {AuditReception.MostRecordsAtOnce} records and {AuditReception.MostBytesAtOnce >> 20} MiB unpacked; the bound of the schema is the largest that clients read.";

    /// <inheritdoc />
    public void Describe(OpenApiOperation operation, OperationFilterContext context)
    {
        if (!IsStored)
            DescribeLines(context);
        operation.RequestBody = new OpenApiRequestBody
        {
            Required = true,
            Description = "Many service records, in one of three forms, packed with gzip (Content-Encoding) or not. A record with faults does not make the body faulty: it is reported under its line, and the others are judged.",
            Content = new Dictionary<string, IOpenApiMediaType>(StringComparer.Ordinal)
            {
                ["application/json"] = Body(operation, "application/json", new OpenApiSchema
                {
                    Type = JsonSchemaType.Array,
                    Items = new OpenApiSchemaReference(nameof(Records.ServiceRecord)),
                    MinItems = 1,
                    MaxItems = int.MaxValue,
                    Description = $"An array of service records. {Limits}",
                }),
                ["application/x-ndjson"] = Body(operation, "application/x-ndjson", Text($"One service record a line, each a JSON object as the schema ServiceRecord says and without a line break in it; blank lines are passed over. {Limits}")),
                ["text/csv"] = Body(operation, "text/csv", Text($"Comma-separated values (RFC 4180, UTF-8): the first line names members by their paths in the schema ServiceRecord, such as combustion.readings.0.coPpm, and each further line is one record. An empty cell means \"not recorded\", and [] in the column of a list states \"none\". {Limits}")),
            },
        };
        operation.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
        operation.Extensions["x-faults-in-answer"] = new JsonNodeExtension(JsonValue.Create(true));
        if (IsStored)
        {
            (operation.Parameters ??= []).Add(new OpenApiParameter
            {
                Name = "Idempotency-Key",
                In = ParameterLocation.Header,
                Description = "A repeated request with this key and the same body gives the audit of the first.",
                Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = 200 },
            });
        }
    }

    /// <summary>The lines of the answer: one for each record, and the last, which has only the summary.</summary>
    private static void DescribeLines(OperationFilterContext context)
    {
        var known = context.SchemaRepository;
        context.SchemaGenerator.GenerateSchema(typeof(AuditStatus), known);
        var line = (OpenApiSchema)known.Schemas[((OpenApiSchemaReference)context.SchemaGenerator.GenerateSchema(typeof(AuditLine), known)).Reference.Id!];
        line.Properties!["summary"] = known.Schemas[nameof(AuditStatus)].Properties!["summary"];
        line.Required!.Clear();
        line.Description += " The last line of an answer at once has only the summary.";
    }

    private static OpenApiMediaType Body(OpenApiOperation operation, string mediaType, OpenApiSchema schema) =>
        new() { Schema = schema, Examples = Examples.Shipped.OfRequests(operation.OperationId!, mediaType) };

    private static OpenApiSchema Text(string description) => new() { Type = JsonSchemaType.String, Description = description, MaxLength = int.MaxValue };
}
