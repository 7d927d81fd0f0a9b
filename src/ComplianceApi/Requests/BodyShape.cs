using System.Text.Json;
using Microsoft.OpenApi;
using ServiceRecords;

namespace ComplianceApi;

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
        utf8 = utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        if (JsonText.Unreadable(utf8.Span) is { } unreadable)
            return new BodyValues { Kind = FaultKind.Unreadable, Faults = { unreadable } };

        try
        {
            using var document = JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = RecordReader.MaxDepth, AllowDuplicateProperties = false });
            return Read(document.RootElement);
        }
        catch (JsonException)
        {
            return new BodyValues { Kind = FaultKind.Unreadable, Faults = { new Fault("#", FaultCodes.DuplicateMember, "An object in the body has two members of one name.") } };
        }
    }

    private BodyValues Read(JsonElement body)
    {
        var values = new BodyValues { Kind = FaultKind.Invalid };
        if (body.ValueKind != JsonValueKind.Object)
        {
            values.Add("#", FaultCodes.WrongType, "Expected an object.");
            return values;
        }

        foreach (var given in body.EnumerateObject().Where(given => given.Value.ValueKind != JsonValueKind.Null))
        {
            var called = JsonText.NameOf(given);
            if (Array.Find(members, member => member.Name == called) is { } known)
                values.Set(known, known.Read(given.Value, new BodyFaults(values.Faults, "#/" + known.Name)));
            else
                values.Add("#/" + Uri.EscapeDataString(called.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)), FaultCodes.UnknownMember, $"The body takes only {string.Join(", ", members.Select(member => member.Name))}.");
        }

        foreach (var absent in members.Where(member => member.IsRequired && !values.Has(member)))
            values.Add("#/" + absent.Name, FaultCodes.RequiredMember, $"'{absent.Name}' is required.");
        return values;
    }
}

/// <summary>What a body says.</summary>
internal sealed class BodyValues
{
    private readonly Dictionary<BodyMember, object?> _values = [];

    /// <summary>What the faults are, if there are any.</summary>
    public required FaultKind Kind { get; init; }

    /// <summary>All faults so far.</summary>
    public List<Fault> Faults { get; } = [];

    /// <summary>All faults as an answer; null without any.</summary>
    public ProblemResult? Problem => Faults.Count > 0 ? ProblemResult.Of(Kind, Faults) : null;

    /// <summary>Whether there are members to look at: the body is an object and can be read.</summary>
    public bool HasMembers => Kind == FaultKind.Invalid && !Faults.Exists(fault => fault.Pointer == "#");

    /// <summary>Whether a member is given, rightly or not.</summary>
    public bool Has(BodyMember member) => _values.ContainsKey(member);

    public object? Find(BodyMember member) => _values.GetValueOrDefault(member);

    public void Set(BodyMember member, object? value) => _values[member] = value;

    public void Add(string place, string code, string detail) => Faults.Add(new Fault(place, code, detail));
}
