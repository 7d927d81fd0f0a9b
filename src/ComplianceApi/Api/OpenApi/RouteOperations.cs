using System.Globalization;
using System.Text.Json.Nodes;
using ComplianceApi.Api.Requests;
using ComplianceApi.Api.Schemas;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;
using Wire;

namespace ComplianceApi.Api.OpenApi;

/// <summary>Documents what routes declare of themselves: parameters, problems, headers and examples.</summary>
internal sealed class RouteOperations : IOperationFilter
{
    /// <summary>Characters of a page: a report has up to ten tables of up to 500 rows, and texts of a record are short.</summary>
    private const int LongestPage = 10_000_000;

    private static readonly Examples Shown = Examples.Shipped;

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        var metadata = context.ApiDescription.ActionDescriptor.EndpointMetadata;
        operation.Parameters ??= [];
        foreach (var parameter in operation.Parameters)
        {
            if (parameter is { In: ParameterLocation.Path, Schema: OpenApiSchema { Type: JsonSchemaType.String, MaxLength: null } text })
                (text.MinLength, text.MaxLength) = (1, 200);
        }

        foreach (var parameter in metadata.OfType<QueryParameters>().SelectMany(declared => declared.All))
            Add(ParameterLocation.Query, parameter.Name, parameter.Description, SchemaOf(parameter, context));
        if (metadata.OfType<TakesIdempotencyKey>().SingleOrDefault() is { } key)
            Add(ParameterLocation.Header, IdempotencyKey.Header, key.Description, IdempotencyKey.Schema);
        if (metadata.OfType<RevalidatedMetadata>().Any())
            Add(ParameterLocation.Header, "If-None-Match", "ETags of answers that the caller has kept; while one is still right, the answer is 304.", Texts(1000));
        if (metadata.OfType<ConditionalMetadata>().Any())
        {
            Add(ParameterLocation.Header, "If-Match", "ETag of what the caller has read; where something else is stored by now, the answer is 412.", Texts(1000));
            Add(ParameterLocation.Header, "If-None-Match", "*: save only where nothing is stored yet. ETags: save only where none of them is what is stored. Else the answer is 412.", Texts(1000));
        }

        foreach (var detail in metadata.OfType<IOperationDetail>())
            detail.Describe(operation, context);

        DescribeAccess(operation, Access.Of(metadata), context.Document);
        if (metadata.OfType<BeyondSchema>().SingleOrDefault() is { } beyond)
        {
            operation.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
            operation.Extensions["x-beyond-schema"] = new JsonNodeExtension(new JsonArray([.. beyond.Codes.Select(code => JsonValue.Create(code))]));
        }

        operation.Deprecated = metadata.OfType<Deprecation>().Any();
        if (operation.RequestBody?.Content?["application/json"] is OpenApiMediaType body)
        {
            if (metadata.OfType<BodyWithout>().SingleOrDefault() is { } less)
                body.Schema = less.Of(body.Schema!, context.SchemaRepository);
            if (metadata.OfType<BodySchema>().SingleOrDefault() is { } own)
                body.Schema = context.SchemaRepository.AddDefinition(own.Name, own.Make());
            body.Examples ??= Shown.OfRequests(operation.OperationId!, "application/json");
            if (metadata.OfType<BodyExample>().SingleOrDefault() is { } whole)
                (body.Examples ??= new Dictionary<string, IOpenApiExample>(StringComparer.Ordinal)).Add("whole", new OpenApiExample { Summary = "A whole record", Value = JsonNode.Parse(whole.Read()) });
        }

        DescribeResponses(operation, metadata);
        if (metadata.OfType<LinesOf>().SingleOrDefault() is { } lines)
            Extend(operation.Responses!["200"].Content![RowStream.LinesMediaType], lines, context);
        foreach (var response in operation.Responses!.Values.OfType<OpenApiResponse>())
            AddRateLimits(response, context.Document);

        void Add(ParameterLocation place, string name, string description, IOpenApiSchema schema) =>
            operation.Parameters.Add(new OpenApiParameter { Name = name, In = place, Description = description, Schema = schema });
    }

    /// <summary>A key, and the scope that it must have: in words and as x-scope, since OpenAPI 3.0 has no place for the scope of a key.</summary>
    private static void DescribeAccess(OpenApiOperation operation, AccessMetadata access, OpenApiDocument document)
    {
        operation.Security = access.IsOpen ? [] : [new() { [new OpenApiSecuritySchemeReference(Documents.KeyScheme, document)] = [] }];
        if (access.Scope is not { } needed)
            return;

        var scope = WireNames.Of(needed);
        operation.Description += $" Needs a key with the scope {scope}.";
        operation.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
        operation.Extensions["x-scope"] = new JsonNodeExtension(JsonValue.Create(scope));
    }

    /// <summary>An enumeration is described once, whichever of the body and the queries have it.</summary>
    private static IOpenApiSchema SchemaOf(QueryParameter parameter, OperationFilterContext context)
    {
        var known = context.SchemaRepository;
        if (parameter.ValueSet is { } set)
        {
            var reference = ValueSets.Of(set, context.SchemaGenerator, known);
            reference.Default = parameter.Schema.Default;
            return reference;
        }

        if (parameter.Enumeration is not { } type)
            return parameter.Schema;

        var name = type.Name;
        if (!known.Schemas.ContainsKey(name))
            known.AddDefinition(name, new OpenApiSchema { Type = JsonSchemaType.String, Enum = parameter.Schema.Enum, Description = MemberSchemas.Texts.Describe(type, MemberSchemas.Texts.Of(type)) });
        return new OpenApiSchemaReference(name) { Default = parameter.Schema.Default };
    }

    private static void DescribeResponses(OpenApiOperation operation, IList<object> metadata)
    {
        if (metadata.OfType<RevalidatedMetadata>().Any())
            operation.Responses!.Add("304", new OpenApiResponse { Description = "What the caller has kept is still right; no body." });

        var failures = metadata.OfType<Failure>().ToList();
        List<AnswerHeader> headers = [.. metadata.OfType<AnswerHeader>(), .. HeadersOf(metadata)];
        var responses = new OpenApiResponses();
        foreach (var (status, response) in operation.Responses!.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            var code = int.Parse(status, CultureInfo.InvariantCulture);
            var titles = failures.Where(failure => failure.StatusCode == code).Select(failure => failure.Description).Distinct(StringComparer.Ordinal).ToList();
            if (titles.Count > 0)
                response.Description = $"{string.Join(". Or: ", titles)}.";
            if (response is OpenApiResponse own)
            {
                foreach (var header in headers.Where(header => header.Status == code || header.Status == AnswerHeader.Every))
                {
                    own.Headers ??= new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal);
                    own.Headers[header.Name] = new OpenApiHeader { Description = header.Description, Schema = header.Name == "Retry-After" ? Seconds() : Texts(2000) };
                }

                foreach (var (mediaType, content) in own.Content ?? new Dictionary<string, IOpenApiMediaType>(StringComparer.Ordinal))
                {
                    if (content is not OpenApiMediaType described)
                        continue;

                    described.Examples = Shown.Of(operation.OperationId!, code, mediaType);
                    if (content.Schema is OpenApiSchema { Format: "binary" } bytes)
                        bytes.MaxLength = mediaType switch { "text/html" => LongestPage, "text/plain" => 10_000, _ => int.MaxValue };
                }
            }

            responses.Add(status, response);
        }

        operation.Responses = responses;
    }

    /// <summary>The bytes of a stream are all that a generated method can hold; what each line of them is, is said beside.</summary>
    private static void Extend(IOpenApiMediaType answer, LinesOf lines, OperationFilterContext context)
    {
        var line = (OpenApiSchemaReference)context.SchemaGenerator.GenerateSchema(lines.Line, context.SchemaRepository);
        var described = (OpenApiMediaType)answer;
        described.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
        described.Extensions["x-lines"] = new JsonNodeExtension(new JsonObject { ["$ref"] = $"#/components/schemas/{line.Reference.Id}" });
    }

    /// <summary>Two headers that every answer has, described once.</summary>
    private static void AddRateLimits(OpenApiResponse response, OpenApiDocument document)
    {
        response.Headers ??= new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal);
        Add("RateLimit-Policy", "How many requests the holder of a key may make: q in w seconds (draft-ietf-httpapi-ratelimit-headers-11). Absent where no key is asked for.");
        Add("RateLimit", "How many requests are left: r now, more in t seconds. Absent where no key is asked for.");

        void Add(string name, string description)
        {
            document.AddComponent(name, new OpenApiHeader { Description = description, Schema = Texts(200) });
            response.Headers[name] = new OpenApiHeaderReference(name, document);
        }
    }

    private static IEnumerable<AnswerHeader> HeadersOf(IList<object> metadata)
    {
        yield return new(201, "Location", "Path of what was stored.");
        yield return new(202, "Location", "Path of what was accepted.");
        yield return new(202, "Retry-After", "Seconds to wait before asking how far it is.");
        yield return new(401, "WWW-Authenticate", "How to show a key, and whether one was shown (RFC 6750).");
        yield return new(415, "Accept", "The media types that are taken.");
        yield return new(503, "Retry-After", "Seconds to wait before another try.");
        yield return new(429, "Retry-After", "Seconds to wait before another try.");
        if (metadata.OfType<RevalidatedMetadata>().Any())
        {
            yield return new(200, "ETag", "Strong validator of this answer, for If-None-Match.");
            yield return new(304, "ETag", "Strong validator of the answer that is still right.");
        }

        if (metadata.OfType<ConditionalMetadata>().Any())
        {
            yield return new(200, "ETag", "Strong validator of what was saved, as reading it gives: for If-Match.");
            yield return new(201, "ETag", "Strong validator of what was saved, as reading it gives: for If-Match.");
        }

        if (metadata.OfType<Deprecation>().Any())
        {
            yield return new(AnswerHeader.Every, "Deprecation", "Since when the route is deprecated, as @ and seconds since 1970 (RFC 9745).");
            yield return new(AnswerHeader.Every, "Sunset", "When the route will stop to answer (RFC 8594).");
        }
    }

    private static OpenApiSchema Seconds() => new() { Type = JsonSchemaType.Integer, Format = "int32", Minimum = "0", Maximum = "3600" };

    private static OpenApiSchema Texts(int longest) => new() { Type = JsonSchemaType.String, MaxLength = longest };
}

/// <summary>Gives an example of a route's body.</summary>
/// <param name="Read">Its JSON.</param>
public sealed record BodyExample(Func<Stream> Read);

/// <summary>A route whose body is a section of the record less one member; the documents then have a schema of its own for it.</summary>
/// <param name="Name">Name of that schema.</param>
/// <param name="Member">The member that it has not.</param>
public sealed record BodyWithout(string Name, string Member)
{
    internal OpenApiSchemaReference Of(IOpenApiSchema section, SchemaRepository known)
    {
        var whole = known.Schemas[((OpenApiSchemaReference)section).Reference.Id!];
        return known.AddDefinition(Name, new OpenApiSchema
        {
            Type = JsonSchemaType.Object,
            Description = whole.Description,
            Properties = whole.Properties!.Where(member => member.Key != Member).ToDictionary(StringComparer.Ordinal),
            AdditionalPropertiesAllowed = false,
        });
    }
}

/// <summary>A route that refuses more of a body than its schema can say: the document lists by which codes, as x-beyond-schema.</summary>
/// <param name="Codes">The codes of those faults.</param>
public sealed record BeyondSchema(params string[] Codes);

/// <summary>Documents a header of a route's answers.</summary>
/// <param name="Status">Of which status; <see cref="Every"/> for all.</param>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it says.</param>
public sealed record AnswerHeader(int Status, string Name, string Description)
{
    /// <summary>Every status.</summary>
    public const int Every = 0;
}
