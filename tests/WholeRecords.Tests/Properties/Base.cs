using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using MadeVisits;
using Records;
using Visits;

namespace WholeRecords.Tests.Properties;

/// <summary>A record to ask about.</summary>
/// <param name="Name">By it what is drawn is drawn, and counterexamples are told.</param>
/// <param name="Utf8">As it is posted.</param>
/// <param name="Lookup">What is looked up beside it.</param>
/// <param name="Whole">What an auditor expects; null of a record that was made.</param>
internal sealed record Start(string Name, byte[] Utf8, Lookup Lookup, WholeRecord? Whole = null)
{
    public static Start Of(WholeRecord whole) => new(whole.Name, whole.Utf8, Lookup.None, whole);
}

/// <summary>A record to start from, what is known of its dangers, and what the engine says of it as it is.</summary>
internal sealed class Base
{
    private readonly IEngine _engine;
    private readonly Lookup _lookup;

    private Base(IEngine engine, Start start, JsonObject json, ServiceRecord record)
    {
        (_engine, _lookup, Name, Whole, Json, Record) = (engine, start.Lookup, start.Name, start.Whole, json, record);
        Said = engine.Judge(record, _lookup);
    }

    public string Name { get; }

    /// <summary>What an auditor expects; null of a record that was made.</summary>
    public WholeRecord? Whole { get; }

    /// <summary>As it is posted. Nobody changes it: <see cref="With"/> works on a copy.</summary>
    public JsonObject Json { get; }

    public ServiceRecord Record { get; }

    public Answer Said { get; }

    /// <summary>Null for a record that cannot be read.</summary>
    public static Base? Of(IEngine engine, Start start) =>
        Held.Read(start.Utf8).Record is { } record ? new Base(engine, start, JsonNode.Parse(start.Utf8)!.AsObject(), record) : null;

    /// <summary>What the engine says once a variant is made; null where it changes nothing or the reader refuses it.</summary>
    public Answer? With(Variant variant) => Copy(variant) is { } copy ? Judge(copy, variant.Lookup) : null;

    /// <summary>What the engine says of another form of the record, with what is looked up beside it besides; null where the reader refuses it.</summary>
    public Answer? Judge(JsonObject json, Lookup lookup) =>
        Held.Read(JsonSerializer.SerializeToUtf8Bytes(json)).Record is { } record ? _engine.Judge(record, Beside(lookup)) : null;

    /// <summary>The visits to this boiler before, the latest first.</summary>
    public IReadOnlyList<PastVisit> Earlier => _lookup.History ?? [];

    private Lookup Beside(Lookup more) => more == Lookup.None ? _lookup : new Lookup
    {
        History = more.History ?? _lookup.History,
        ProfileId = more.ProfileId,
        ProfileVersion = more.ProfileVersion,
        ProfileLimits = more.ProfileLimits,
    };

    private JsonObject? Copy(Variant variant)
    {
        if (variant.Lookup == Lookup.None && variant.Changes.All(change => !change.Pointer.EndsWith('-') && JsonNode.DeepEquals(Json.At(change.Pointer), change.Value)))
            return null;
        var copy = Json.DeepClone().AsObject();
        foreach (var (pointer, value) in variant.Changes)
            copy.Put(pointer, value?.DeepClone());
        return copy;
    }
}

/// <summary>One value set, or (null) removed.</summary>
internal readonly record struct Change(string Pointer, JsonNode? Value)
{
    public override string ToString() => Value is null ? $"{Pointer} removed" : $"{Pointer} = {Value.ToJsonString()}";
}

/// <summary>A way to change a record.</summary>
/// <param name="Kind">What it is, without the places: by it counterexamples are counted together.</param>
/// <param name="Changes">In order.</param>
internal sealed record Variant(string Kind, params IReadOnlyList<Change> Changes)
{
    /// <summary>What is looked up beside the record.</summary>
    public Lookup Lookup { get; init; } = Lookup.None;

    /// <summary>As the page shows it.</summary>
    public string Words { get; init; } = string.Join(", ", Changes);

    public static Variant operator +(Variant one, Variant other) => new(string.Join(" + ", new[] { one.Kind, other.Kind }.Order(StringComparer.Ordinal)), [.. one.Changes, .. other.Changes])
    {
        Lookup = one.Lookup == Lookup.None ? other.Lookup : one.Lookup,
        Words = $"{one.Words}, {other.Words}",
    };
}
