using System.Text.Json;
using Findings;

namespace Kernel.Catalogues;

/// <summary>
/// One case of a rule: the example record, changed, and what the rule must then say. Cases stand beside their rule and are run by the
/// tests; the catalogue shows them as examples.
/// </summary>
public sealed class RuleCase
{
    /// <summary>The situation in words.</summary>
    public required string Name { get; init; }

    /// <summary>
    /// Members to set, by JSON Pointer, in the order written; objects on the way are made, and a last segment "-" appends to a list.
    /// </summary>
    public IReadOnlyDictionary<string, JsonElement>? Set { get; init; }

    /// <summary>Members to remove, by JSON Pointer, before anything is set.</summary>
    public IReadOnlyList<string>? Remove { get; init; }

    /// <summary>Earlier visits that are looked up beside the record, the latest first.</summary>
    public IReadOnlyList<PastVisit>? History { get; init; }

    /// <summary>Earlier answers to the same visit that named a danger, the latest first.</summary>
    public IReadOnlyList<EarlierAnswer>? SaidBefore { get; init; }

    /// <summary>What the rule must say.</summary>
    public required Expectation Expect { get; init; }

    /// <summary>The record of this case as JSON.</summary>
    public byte[] RecordFrom(ReadOnlySpan<byte> exampleRecord) => ChangedRecord.Of(exampleRecord, Remove, Set);
}

/// <summary>What a rule must say of a case.</summary>
public sealed class Expectation
{
    /// <summary>The outcome: of the answer for <c>subject</c>, or without one the gravest of the rule's answers.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>JSON Pointer of the subject.</summary>
    public string? Subject { get; init; }

    /// <summary>The expected class, where it matters.</summary>
    public ExpectedClass? ExpectedClass { get; init; }

    /// <summary>Pointers that the answer must ask for.</summary>
    public IReadOnlyList<string>? Missing { get; init; }

    /// <summary>Words that the message must contain.</summary>
    public string? Says { get; init; }

    /// <summary>Words that the remedy must contain.</summary>
    public string? Advises { get; init; }

    /// <summary>Pointers that must stand among the evidence.</summary>
    public IReadOnlyList<string>? Shows { get; init; }

    /// <summary>The distance to the limit: 0 is exactly on it.</summary>
    public decimal? Margin { get; init; }
}

/// <summary>Finds the cases of a rule.</summary>
internal static class RuleCases
{
    /// <typeparam name="T">Their form: <see cref="RuleCase"/>, or <see cref="DutyCase"/> of a rule of the duties.</typeparam>
    public static IReadOnlyList<T> Of<T>(RuleInfo rule)
    {
        var source = rule.Member.Module.Assembly;
        var name = source.GetManifestResourceNames()
            .SingleOrDefault(resource => resource.EndsWith($"/{rule.Name}.cases.json", StringComparison.Ordinal));
        return name is null ? [] : source.ReadResource<List<T>>(name);
    }
}
