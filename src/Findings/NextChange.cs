using System.Text.Json.Serialization;
using Wire;

namespace Findings;

/// <summary>What the next known change of law, standards or limits would make of an evaluation.</summary>
public sealed class NextChange
{
    /// <summary>The first day of the change; absent when no change is known.</summary>
    public DateOnly? On { get; init; }

    /// <summary>What changes on that day.</summary>
    public required IReadOnlyList<LawChange> What { get; init; }

    /// <summary>The outcome that the record would then have; absent when no change is known.</summary>
    public OverallOutcome? Outcome { get; init; }

    /// <summary>The answers that would then differ, seen from the same day as the evaluation.</summary>
    public required IReadOnlyList<ChangedAnswer> Findings { get; init; }
}

/// <summary>A rule, limit or document that begins, ends or changes on a day.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Id">Its id in the catalogue.</param>
/// <param name="How">What happens to it.</param>
/// <param name="Text">The same in words.</param>
public sealed record LawChange(LawKind Kind, string Id, LawEvent How, string Text);

/// <summary>An answer of a rule before and after a change.</summary>
public sealed class ChangedAnswer
{
    /// <summary>The rule.</summary>
    public required string RuleId { get; init; }

    /// <summary>JSON Pointer of what is judged.</summary>
    public required string Subject { get; init; }

    /// <summary>What the rule says before; absent when it says nothing.</summary>
    public Outcome? Before { get; init; }

    /// <summary>What it would say from that day; absent when it would say nothing.</summary>
    public Outcome? After { get; init; }

    /// <summary>Its sentence then, or before where it would say nothing.</summary>
    public string? Message { get; init; }
}

/// <summary>What can change.</summary>
[JsonConverter(typeof(WireEnumConverter<LawKind>))]
public enum LawKind
{
    /// <summary>A rule.</summary>
    Rule,

    /// <summary>A limit.</summary>
    Limit,

    /// <summary>A law or standard, or an edition of it.</summary>
    Document,
}

/// <summary>What can happen to it.</summary>
[JsonConverter(typeof(WireEnumConverter<LawEvent>))]
public enum LawEvent
{
    /// <summary>It comes into force.</summary>
    Begins,

    /// <summary>It goes out of force.</summary>
    Ends,

    /// <summary>It is another from that day.</summary>
    Changes,
}
