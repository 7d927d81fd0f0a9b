using System.Reflection;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Records;
using Swashbuckle.AspNetCore.SwaggerGen;
using Wire;

namespace ComplianceApi.Api.Schemas;

/// <summary>
/// The sets of values that are texts in the program, because the rules bring them or the kernel does not know them, and that the documents
/// describe once under their name.
/// </summary>
internal static class ValueSets
{
    /// <summary>Those whose law the rules hold.</summary>
    public const string Jurisdiction = "Jurisdiction";

    /// <summary>A reference to the set <paramref name="name"/>, which is described where it is not yet.</summary>
    public static OpenApiSchemaReference Of(string name, ISchemaGenerator generator, SchemaRepository known)
    {
        if (name != Jurisdiction)
            return (OpenApiSchemaReference)generator.GenerateSchema(typeof(Fuel), known);

        if (!known.Schemas.ContainsKey(name))
            known.AddDefinition(name, Jurisdictions());
        return new OpenApiSchemaReference(name);
    }

    /// <summary>Puts references in place of the texts of an object's schema.</summary>
    public static void Refer(OpenApiSchema schema, Type type, ISchemaGenerator generator, SchemaRepository known)
    {
        foreach (var property in type.GetProperties())
        {
            if (property.GetCustomAttribute<ValuesOfAttribute>() is not { } values || schema.Properties?.TryGetValue(WireNames.OfMember(property.Name), out var written) != true)
                continue;

            if (written is OpenApiSchema { Items: not null } list)
                list.Items = Of(values.Name, generator, known);
            else
                schema.Properties[WireNames.OfMember(property.Name)] = Described(Of(values.Name, generator, known), written!);
        }
    }

    private static OpenApiSchemaReference Described(OpenApiSchemaReference reference, IOpenApiSchema written)
    {
        reference.Description = written.Description;
        return reference;
    }

    private static OpenApiSchema Jurisdictions() => new()
    {
        Type = JsonSchemaType.String,
        Enum = [.. ShippedRules.Jurisdictions.Select(place => (JsonNode)JsonValue.Create(place.Code))],
        Description = $"Whose law applies, by ISO 3166-2.\n\n{string.Join('\n', ShippedRules.Jurisdictions.Select(place => $"- {place.Code}: {place.Name}."))}",
    };
}
