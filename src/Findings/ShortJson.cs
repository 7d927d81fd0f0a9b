using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Findings;

/// <summary>How answers are written that are not shown whole: in the same form, without the members that only a whole one has.</summary>
public static class ShortJson
{
    /// <summary>An evaluation in short.</summary>
    public static JsonTypeInfo<Evaluation> Evaluation { get; } = Of<Evaluation>(EvaluationJson.Default);

    /// <summary>The metadata of <typeparamref name="T"/> without those members, to be made once and kept.</summary>
    /// <param name="context">The context that has it in full.</param>
    public static JsonTypeInfo<T> Of<T>(JsonSerializerContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return (JsonTypeInfo<T>)new JsonSerializerOptions(context.Options) { TypeInfoResolver = context.WithAddedModifier(LeaveOut) }.GetTypeInfo(typeof(T));
    }

    private static void LeaveOut(JsonTypeInfo type)
    {
        foreach (var member in type.Properties.ToList())
        {
            if (member.AttributeProvider?.GetCustomAttributes(typeof(WholeOnlyAttribute), inherit: true) is not [WholeOnlyAttribute mark])
                continue;

            if (mark.OfRows)
                member.ShouldSerialize = (finding, _) => !((Finding)finding).IsRow;
            else
                type.Properties.Remove(member);
        }
    }
}
