using Findings;
using Kernel;
using Kernel.Catalogues;

namespace ComplianceApi.Api.Rules;

/// <summary>A rule.</summary>
public sealed record RuleView
{
    /// <summary>Speaking id, never reused.</summary>
    public required string Id { get; init; }

    /// <summary>What the rule demands, in words.</summary>
    public required string Title { get; init; }

    /// <summary>Why it is asked, in two sentences.</summary>
    public required string Why { get; init; }

    /// <summary>Its subject area.</summary>
    public required string Topic { get; init; }

    /// <summary>True when it rests, wholly or in part, on common practice of the trade without a published source.</summary>
    public required bool CommonPractice { get; init; }

    /// <summary>How far it covers its demand, the record being true.</summary>
    public required Coverage Coverage { get; init; }

    /// <summary>Why.</summary>
    public required string CoverageWhy { get; init; }

    /// <summary>First day in force; absent: always was.</summary>
    public DateOnly? InForceFrom { get; init; }

    /// <summary>Last day in force; absent: no end known.</summary>
    public DateOnly? InForceTo { get; init; }

    /// <summary>Pointers of the members that settle whether it applies; while one is absent, the rule is missing its evidence.</summary>
    public required IReadOnlyList<string> AppliesBy { get; init; }

    /// <summary>Pointer of the list or section that its subjects come from; absent: it judges the visit as a whole.</summary>
    public string? Expects { get; init; }

    /// <summary>The laws and standards that it rests on.</summary>
    public required IReadOnlyList<Reference> References { get; init; }

    /// <summary>Ids of the limits that it reads, as in the limits of the service; a maker's own is none of them.</summary>
    public required IReadOnlyList<string> Uses { get; init; }

    /// <summary>Every line of those limits, shipped or of the deployer. Absent in lists.</summary>
    public IReadOnlyList<LimitDefinition>? Limits { get; init; }

    /// <summary>Its cases: a clean record, changed, and what the rule must then say. The tests run them. Absent in lists.</summary>
    public IReadOnlyList<RuleCase>? Cases { get; init; }
}

/// <summary>A set of rules.</summary>
public sealed class RuleSetSummary
{
    /// <summary>Name of the rule set.</summary>
    public required string Id { get; init; }

    /// <summary>Its version.</summary>
    public required string Version { get; init; }

    /// <summary>The first day on which this version counts in place of the one before.</summary>
    public required DateOnly CountsFrom { get; init; }

    /// <summary>SHA-256 over what the rules demand in words and numbers: rules, limits, overrides, references, version and days, lower-case hex. The same in every build.</summary>
    public required string LawHash { get; init; }

    /// <summary>SHA-256 over the compiled program that judges, lower-case hex. Another build, by another compiler, may have another.</summary>
    public required string CodeHash { get; init; }

    /// <summary>The first day whose law the rules know; by the law of an earlier day a record is incomplete at best.</summary>
    public required DateOnly KnownFrom { get; init; }

    /// <summary>The day on which rules, limits and references were last held against the law and the standards; by the law of a day more than twelve months later an answer has a caution.</summary>
    public required DateOnly ReviewedOn { get; init; }

    /// <summary>How many rules it has.</summary>
    public required int Rules { get; init; }

    /// <summary>How many limits.</summary>
    public required int Limits { get; init; }

    /// <summary>How many limits the organisation that runs this service has set over them.</summary>
    public required int Overrides { get; init; }

    /// <summary>How many laws and standards it cites.</summary>
    public required int References { get; init; }
}
