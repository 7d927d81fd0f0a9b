using System.Collections.Concurrent;
using Findings;
using Wire;

namespace Kernel.Catalogues;

/// <summary>A law or standard that rules rest on.</summary>
public sealed record ReferenceDocument
{
    /// <summary>Short id.</summary>
    public required string Id { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>law, standard, procedure, guidance or practice.</summary>
    public required string Kind { get; init; }

    /// <summary>Where it applies.</summary>
    [ValuesOf("Jurisdiction")]
    public required IReadOnlyList<string> Jurisdictions { get; init; }

    /// <summary>First day in force, where known.</summary>
    public DateOnly? InForceFrom { get; init; }

    /// <summary>Last day in force.</summary>
    public DateOnly? InForceTo { get; init; }

    /// <summary>Its editions by the days on which work may follow them, where that matters.</summary>
    public IReadOnlyList<DocumentEdition>? Editions { get; init; }

    /// <summary>What of it is covered, and what is not and why.</summary>
    public required IReadOnlyList<LedgerEntry> Clauses { get; init; }
}

/// <summary>An edition of a standard.</summary>
public sealed class DocumentEdition
{
    /// <summary>Number or name.</summary>
    public required string Edition { get; init; }

    /// <summary>First day on which work may follow it; absent: long ago.</summary>
    public DateOnly? InForceFrom { get; init; }

    /// <summary>Last day; absent: no end known.</summary>
    public DateOnly? InForceTo { get; init; }
}

/// <summary>Every law and standard cited. Which rules rest on which clause is what the rules cite.</summary>
public sealed class ReferenceBook
{
    private readonly Dictionary<string, ReferenceDocument> _byId;

    /// <summary>The documents as references.json has them, with what <paramref name="rules"/> cite.</summary>
    internal ReferenceBook(IReadOnlyList<ReferenceDocument> documents, IReadOnlyList<RuleInfo> rules)
    {
        Documents = [.. documents.Select(document => Ledger.Filled(document, rules))];
        _byId = Documents.ToDictionary(document => document.Id, StringComparer.Ordinal);
    }

    /// <summary>All of them.</summary>
    public IReadOnlyList<ReferenceDocument> Documents { get; }

    /// <summary>The document with this id, or null.</summary>
    public ReferenceDocument? Find(string id) => _byId.GetValueOrDefault(id);

    private readonly ConcurrentDictionary<RuleInfo, IReadOnlyList<Reference>> _ofRule = new();

    /// <summary>A rule's citations as a finding shows them.</summary>
    public IReadOnlyList<Reference> Of(RuleInfo rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return _ofRule.GetOrAdd(rule, info =>
        [
            .. info.Citations.Select(citation => (citation, document: _byId[citation.Reference])).Select(pair => new Reference
            {
                Id = pair.document.Id,
                Title = pair.document.Title,
                Clause = pair.citation.Clause,
                Jurisdiction = string.Join(", ", pair.document.Jurisdictions),
            }),
        ]);
    }
}
