using Microsoft.OpenApi;

namespace ComplianceApi.Api.Schemas;

/// <summary>A route whose body no type describes.</summary>
/// <param name="Name">Name of its schema.</param>
/// <param name="Make">Makes it.</param>
internal sealed record BodySchema(string Name, Func<OpenApiSchema> Make);
