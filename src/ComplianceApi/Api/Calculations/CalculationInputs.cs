using System.Globalization;
using Microsoft.OpenApi;
using Records;
using Visits.Computations;

namespace ComplianceApi.Api.Calculations;

/// <summary>
/// The schema of a computation's body: every input that any computation takes. Which of them one takes, and in which range, depends on
/// its name and is listed with the computations; a schema for each would make clients into unions.
/// </summary>
internal static class CalculationInputs
{
    public const string Name = "CalculationInputs";

    public static OpenApiSchema Schema => new()
    {
        Type = JsonSchemaType.Object,
        Description = "The inputs of one computation by their names. Each computation takes its own, as listCalculations says; others are refused.",
        AdditionalPropertiesAllowed = false,
        Properties = ComputationTable.All.SelectMany(computation => computation.Inputs)
            .GroupBy(input => input.Name, StringComparer.Ordinal)
            .OrderBy(inputs => inputs.Key, StringComparer.Ordinal)
            .ToDictionary(inputs => inputs.Key, inputs => Of([.. inputs]), StringComparer.Ordinal),
    };

    private static IOpenApiSchema Of(List<ComputationInput> inputs)
    {
        var first = inputs[0];
        return first.Kind switch
        {
            InputKind.Number => new OpenApiSchema
            {
                Type = JsonSchemaType.Number,
                Format = "decimal",
                Description = $"{first.What}. Unit (UCUM): {first.Unit}.",
                Minimum = inputs.Min(input => input.Min)?.ToString(CultureInfo.InvariantCulture),
                Maximum = inputs.Max(input => input.Max)?.ToString(CultureInfo.InvariantCulture),
            },
            InputKind.Fuel => new OpenApiSchemaReference(nameof(Fuel)) { Description = first.What + "." },
            _ => new OpenApiSchema { Type = JsonSchemaType.String, Format = "date", MaxLength = 10, Description = first.What + "." },
        };
    }
}
