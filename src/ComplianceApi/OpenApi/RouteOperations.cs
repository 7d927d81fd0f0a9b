using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace ComplianceApi;

/// <summary>Documents what routes declare of themselves: query parameters, problems, headers and an example of the body.</summary>
internal sealed class RouteOperations : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        var metadata = context.ApiDescription.ActionDescriptor.EndpointMetadata;
        foreach (var parameter in metadata.OfType<QueryParameters>().SelectMany(declared => declared.All))
        {
            operation.Parameters ??= [];
            operation.Parameters.Add(new OpenApiParameter
            {
                Name = parameter.Name,
                In = ParameterLocation.Query,
                Description = parameter.Description,
                Schema = parameter.Schema,
            });
        }

        if (metadata.OfType<BodyExample>().SingleOrDefault() is { } example && operation.RequestBody?.Content?["application/json"] is OpenApiMediaType body)
            body.Example = JsonNode.Parse(example.Read());

        if (metadata.OfType<AuditBodies>().Any())
            DescribeAudit(operation);

        DescribeResponses(operation, [.. metadata.OfType<Failure>()]);
    }

    private static void DescribeResponses(OpenApiOperation operation, IReadOnlyList<Failure> failures)
    {
        var responses = new OpenApiResponses();
        foreach (var (status, response) in operation.Responses!.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            var titles = failures.Where(failure => failure.StatusCode.ToString(CultureInfo.InvariantCulture) == status).Select(failure => failure.Description).Distinct(StringComparer.Ordinal).ToList();
            if (titles.Count > 0)
                response.Description = $"{string.Join(". Or: ", titles)}.";
            if (response is OpenApiResponse own && HeaderOf(status) is var (name, text))
                own.Headers = new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal) { [name] = new OpenApiHeader { Description = text, Schema = new OpenApiSchema { Type = JsonSchemaType.String } } };
            responses.Add(status, response);
        }

        operation.Responses = responses;
    }

    private static void DescribeAudit(OpenApiOperation operation)
    {
        var record = new OpenApiSchemaReference(nameof(ServiceRecords.ServiceRecord));
        var text = new OpenApiSchema { Type = JsonSchemaType.String };
        operation.RequestBody = new OpenApiRequestBody
        {
            Required = true,
            Description = "Many service records.",
            Content = new Dictionary<string, IOpenApiMediaType>(StringComparer.Ordinal)
            {
                ["application/json"] = new OpenApiMediaType { Schema = new OpenApiSchema { Type = JsonSchemaType.Array, Items = record } },
                ["application/x-ndjson"] = new OpenApiMediaType { Schema = text },
                ["text/csv"] = new OpenApiMediaType { Schema = text },
            },
        };
        operation.Parameters ??= [];
        foreach (var (name, description) in new[] { ("Prefer", "respond-async: store the records and judge them later."), ("Idempotency-Key", "With respond-async: a repeated request with this key and the same body gives the audit of the first.") })
            operation.Parameters.Add(new OpenApiParameter { Name = name, In = ParameterLocation.Header, Description = description, Schema = text });
    }

    private static (string Name, string Text)? HeaderOf(string status) => status switch
    {
        "201" => ("Location", "Path of what was stored."),
        "202" => ("Location", "Path of the audit."),
        "503" => ("Retry-After", "Seconds to wait before another try."),
        _ => null,
    };
}

/// <summary>Gives an example of a route's body.</summary>
/// <param name="Read">Its JSON.</param>
public sealed record BodyExample(Func<Stream> Read);
