using System.Globalization;
using System.Reflection;
using System.Text.Json.Nodes;
using ComplianceApi.Api.Schemas;
using Findings;
using Microsoft.OpenApi;
using Records.Members;
using Records.Metadata;
using Swashbuckle.AspNetCore.SwaggerGen;
using Wire;

namespace ComplianceApi.Api.OpenApi;

/// <summary>
/// Adds to the schemas what the record's attributes say (range, unit, lengths, the question, the class), lets answers grow, bounds what they
/// carry, and leaves null out: absent members are absent.
/// </summary>
internal sealed class MemberSchemas : ISchemaFilter
{
    public static readonly ValueTexts Texts = new();

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema own)
            return;

        own.Type &= ~JsonSchemaType.Null;
        if (context.MemberInfo is null && own.Properties is { Count: > 0 })
            ValueSets.Refer(own, context.Type, context.SchemaGenerator, context.SchemaRepository);
        var isRecord = Array.Exists((context.MemberInfo?.DeclaringType ?? context.Type).GetProperties(), member => member.IsDefined(typeof(AskAttribute)));
        if (context.MemberInfo is PropertyInfo property)
            Describe(own, property);
        else if (own.Enum is { Count: > 0 } && context.Type.IsEnum)
            own.Description = Texts.Describe(context.Type, own.Description);
        else if (own.Properties is { Count: > 0 } && !isRecord)
            own.AdditionalPropertiesAllowed = true;

        if (context.MemberInfo is null && isRecord)
            Class(own, context.Type);
        if (context.MemberInfo is null && own.Required is { Count: > 0 } required)
        {
            // By code units whatever the culture, as nothing else sorts them.
            var leftOut = context.Type.GetProperties().Where(member => member.IsDefined(typeof(WholeOnlyAttribute))).Select(member => WireNames.OfMember(member.Name));
            own.Required = new SortedSet<string>(required.Except(leftOut, StringComparer.Ordinal), StringComparer.Ordinal);
        }

        if (own.Items is OpenApiSchema items)
            AnswerBounds.Bound(items, context.MemberInfo?.Name);
        if (!isRecord)
            AnswerBounds.Bound(own, context.MemberInfo?.Name);
    }

    private static void Describe(OpenApiSchema schema, PropertyInfo property)
    {
        if (property.GetCustomAttribute<QuantityAttribute>() is { } quantity)
        {
            schema.Minimum = Text(quantity.Minimum);
            schema.Maximum = Text(quantity.Maximum);
            schema.Description = $"{schema.Description} Unit (UCUM): {quantity.Unit}.";
            Extend(schema, "x-unit", quantity.Unit);
        }

        if (property.GetCustomAttribute<TextAttribute>() is { } text)
        {
            schema.MinLength = text.MayBeEmpty ? 0 : 1;
            schema.MaxLength = text.MaxLength;
            schema.Pattern = RecordPatterns.OfText(text);
        }

        if (property.GetCustomAttribute<WholeOnlyAttribute>() is { } whole)
            schema.Description += whole.OfRows ? " Left out of rows where an evaluation is not shown whole (include=all)." : " Left out of an evaluation that is not shown whole (include=all).";
        if (schema.Format is "date" or "date-time")
            RecordPatterns.Bound(schema, property);
        if (property.GetCustomAttribute<ItemsAttribute>() is { } items)
            schema.MaxItems = items.Max;
        if (property.GetCustomAttribute<AskAttribute>() is { } ask)
            Extend(schema, "x-ask", ask.Question);
    }

    /// <summary>All members of a section in one place: a member that refers to another schema can carry nothing itself in OpenAPI 3.0.</summary>
    private static void Class(OpenApiSchema schema, Type type) => Extend(
        schema, "x-member-class", new JsonObject(RecordMembers.Of(type).Select(member => KeyValuePair.Create(member.Name, (JsonNode?)WireNames.Of(member.Class)))));

    private static void Extend(OpenApiSchema schema, string name, JsonNode value)
    {
        schema.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
        schema.Extensions[name] = new JsonNodeExtension(value);
    }

    private static string Text(double number) => ((decimal)number).ToString(CultureInfo.InvariantCulture);
}
