using Findings;
using Kernel;
using Kernel.Catalogues;

namespace ComplianceApi.Api.Rules;

/// <summary>A rule.</summary>
public sealed record RuleView
{
    /// <summary>Speaking id, never reused.</summary>
    public required string Id { get; init; }

    /// <summary>The set in which it stands: one of the duties says what a visit owes, a demand what the record must show, one of the situation what follows from all that was found.</summary>
    public required SetOfRules Set { get; init; }

    /// <summary>What the rule demands, in words; of a rule of the duties that calls, what makes it call.</summary>
    public required string Title { get; init; }

    /// <summary>Why it is asked, in two sentences. Absent where a rule asks for nothing itself.</summary>
    public string? Why { get; init; }

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

    /// <summary>The parts of duties that its demand serves: what silence weighs of what it asks for hangs on what the visit owes of them. None: what it asks for is asked of every visit.</summary>
    public required IReadOnlyList<ServedPart> Serves { get; init; }

    /// <summary>Further places at which the danger that it finds may be recorded as a defect.</summary>
    public required IReadOnlyList<string> AlsoRecordedAt { get; init; }

    /// <summary>Pointer of what of the record makes a rule of the duties call; absent: no one member does, or what was worked on.</summary>
    public string? CalledBy { get; init; }

    /// <summary>What a rule of the duties calls for. Absent in the other rules.</summary>
    public IReadOnlyList<CalledFor>? Calls { get; init; }

    /// <summary>Every line of those limits, shipped or of the deployer. Absent in lists.</summary>
    public IReadOnlyList<LimitDefinition>? Limits { get; init; }

    /// <summary>Its cases: a clean record, changed, and what the rule must then say. The tests run them. Absent in lists.</summary>
    public IReadOnlyList<RuleCase>? Cases { get; init; }

    /// <summary>The same of a rule of the duties: what it must then call for, or infer. Absent in lists.</summary>
    public IReadOnlyList<DutyCase>? DutyCases { get; init; }
}

/// <summary>A part of a duty that a demand serves.</summary>
public sealed class ServedPart
{
    /// <summary>The part; what stands before the slash is the kind of duty.</summary>
    public required string Part { get; init; }

    /// <summary>The most that silence of this demand weighs, however grave the duty.</summary>
    public required Weight AtMost { get; init; }

    /// <summary>The member of which alone this is said, an asterisk for any element; absent: of all that no other serving names.</summary>
    public string? Of { get; init; }
}

/// <summary>What a rule of the duties calls for, of one weight.</summary>
public sealed class CalledFor
{
    /// <summary>What silence about it weighs; absent: it is put off until the boiler is used again.</summary>
    public Weight? Weight { get; init; }

    /// <summary>The parts of duties; what stands before the slash is the kind.</summary>
    public required IReadOnlyList<string> Parts { get; init; }

    /// <summary>Pointer of what of the record calls for this; absent: what makes the rule call.</summary>
    public string? Pointer { get; init; }

    /// <summary>Of which visits only, as the end of a sentence that begins "where"; absent: of all that make the rule call.</summary>
    public string? Where { get; init; }

    /// <summary>True where it is owed because an earlier visit put it off, and is put off again unless the visit owes it otherwise; absent otherwise.</summary>
    public bool? PutOffAgain { get; init; }
}

/// <summary>How many rules stand in a set.</summary>
public sealed class SetCount
{
    /// <summary>The set.</summary>
    public required SetOfRules Set { get; init; }

    /// <summary>How many rules.</summary>
    public required int Rules { get; init; }
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

    /// <summary>SHA-256 over what the rules demand in words and numbers: the rules of every set, limits, overrides, references, duties, reasons, version and days, lower-case hex. The same in every build.</summary>
    public required string LawHash { get; init; }

    /// <summary>SHA-256 over the compiled program that judges, lower-case hex. Another build, by another compiler, may have another.</summary>
    public required string CodeHash { get; init; }

    /// <summary>The first day whose law the rules know; by the law of an earlier day a record is incomplete at best.</summary>
    public required DateOnly KnownFrom { get; init; }

    /// <summary>The day on which rules, limits and references were last held against the law and the standards; by the law of a day more than twelve months later an answer has a caution.</summary>
    public required DateOnly ReviewedOn { get; init; }

    /// <summary>How many rules it has, in all its sets.</summary>
    public required int Rules { get; init; }

    /// <summary>The sets, in the order in which they are asked.</summary>
    public required IReadOnlyList<SetCount> Sets { get; init; }

    /// <summary>How many limits.</summary>
    public required int Limits { get; init; }

    /// <summary>How many limits the organisation that runs this service has set over them.</summary>
    public required int Overrides { get; init; }

    /// <summary>How many laws and standards it cites.</summary>
    public required int References { get; init; }
}
