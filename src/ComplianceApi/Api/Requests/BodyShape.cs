using System.Text.Json;
using ComplianceApi.Api.Schemas;
using ComplianceApi.Problems;
using Microsoft.OpenApi;
using Records.Faults;
using Wire;

namespace ComplianceApi.Api.Requests;

/// <summary>A body that is no record, as the list of its members.</summary>
internal sealed class BodyShape(string name, string description, params BodyMember[] members)
{
    /// <summary>The schema for the documents.</summary>
    public BodySchema Schema => new(name, () => new OpenApiSchema
    {
        Type = JsonSchemaType.Object,
        Description = description,
        Properties = members.ToDictionary(member => member.Name, IOpenApiSchema (member) => member.Schema, StringComparer.Ordinal),
        Required = members.Where(member => member.IsRequired).Select(member => member.Name).ToHashSet(StringComparer.Ordinal),
        AdditionalPropertiesAllowed = false,
    });

    /// <summary>The values of a body with all faults of its members; what members do to each other is for the caller to see.</summary>
    public BodyValues Read(ReadOnlyMemory<byte> utf8)
    {
        using var document = BodyText.Parse(utf8, out var unreadable);
        return document is null ? new BodyValues(FaultKind.Unreadable, [unreadable!]) : Read(document.RootElement);
    }

    private BodyValues Read(JsonElement body)
    {
        List<Fault> duplicates = [.. BodyText.Duplicates(body)];
        var values = new BodyValues(duplicates.Count > 0 ? FaultKind.Unreadable : FaultKind.Invalid, duplicates);
        if (body.ValueKind != JsonValueKind.Object)
        {
            values.Add("#", FaultCodes.WrongType, "Expected an object.");
            return values;
        }

        var unknown = $"The body takes only {string.Join(", ", members.Select(member => member.Name))}.";
        foreach (var given in body.EnumerateObject().Where(given => given.Value.ValueKind != JsonValueKind.Null))
        {
            var called = JsonNames.Of(given);
            if (Array.Find(members, member => member.Name == called) is { } known)
                values.Set(known, known.Read(given.Value, new BodyFaults(values.Faults, "#/" + known.Name)));
            else
                values.Add(BodyText.Below("#", called), FaultCodes.UnknownMember, unknown);
        }

        foreach (var absent in members.Where(member => member.IsRequired && !values.Has(member)))
            values.Add("#/" + absent.Name, FaultCodes.RequiredMember, $"'{absent.Name}' is required.");
        return values;
    }
}

/// <summary>What a body says.</summary>
/// <param name="kind">What the faults are, if there are any.</param>
/// <param name="faults">The faults so far.</param>
internal sealed class BodyValues(FaultKind kind, List<Fault> faults)
{
    private readonly Dictionary<BodyMember, object?> _values = [];

    /// <summary>All faults so far.</summary>
    public List<Fault> Faults { get; } = faults;

    /// <summary>The faults as an answer; null without any.</summary>
    public ProblemResult? Problem => Faults.Count > 0 ? ProblemResult.Of(kind, Fault.Listed(Faults)) : null;

    /// <summary>Whether there are members to look at: the body is an object and can be read.</summary>
    public bool HasMembers => kind == FaultKind.Invalid && !Faults.Exists(fault => fault.Pointer == "#");

    /// <summary>Whether a member is given, rightly or not.</summary>
    public bool Has(BodyMember member) => _values.ContainsKey(member);

    public object? Find(BodyMember member) => _values.GetValueOrDefault(member);

    public void Set(BodyMember member, object? value) => _values[member] = value;

    public void Add(string place, string code, string detail) => Faults.Add(new Fault(place, code, detail));
}
