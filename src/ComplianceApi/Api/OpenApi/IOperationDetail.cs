using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace ComplianceApi.Api.OpenApi;

/// <summary>Metadata of a route that has more to document than its types and the other metadata say.</summary>
internal interface IOperationDetail
{
    /// <summary>Adds it to the operation, whose parameters and answers stand already.</summary>
    void Describe(OpenApiOperation operation, OperationFilterContext context);
}
