using Findings;

namespace Kernel;

/// <summary>The rule's speaking id, never reused and never given another meaning.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class IdAttribute(string id) : Attribute
{
    /// <summary>The id.</summary>
    public string Id { get; } = id;
}

/// <summary>What the rule demands, in words.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class TitleAttribute(string title) : Attribute
{
    /// <summary>The demand.</summary>
    public string Title { get; } = title;
}

/// <summary>Why it is asked at all, in two sentences: what goes wrong where it is not so, and why that counts now.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class WhyAttribute(string why) : Attribute
{
    /// <summary>The two sentences.</summary>
    public string Why { get; } = why;
}

/// <summary>Every limit that the rule can read, itself or through a word of the visit. The tests hold it against the compiled code.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class UsesAttribute(params string[] limits) : Attribute
{
    /// <summary>Ids of limits.</summary>
    public IReadOnlyList<string> Limits { get; } = limits;
}

/// <summary>A part of a duty that the rule's demand serves: what silence weighs of what it asks for hangs on what of that the visit owes.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property, AllowMultiple = true)]
public sealed class ServesAttribute(string part) : Attribute
{
    /// <summary>The part.</summary>
    public string Part { get; } = part;

    /// <summary>The most that silence of this demand weighs, however grave the duty.</summary>
    public Weight AtMost { get; init; } = Weight.Must;

    /// <summary>The member of which alone this is said, an asterisk for any element; absent: of all that no other serving names.</summary>
    public string? Of { get; init; }
}

/// <summary>The text of the argument is the name of a member of the record: the compiler refuses an expression that names none.</summary>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class NamesMemberAttribute : Attribute;

/// <summary>The subject area of a rule, or of all rows of a table: one of <see cref="Findings.Topics"/>.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class TopicAttribute(string topic) : Attribute
{
    /// <summary>The topic.</summary>
    public string Topic { get; } = topic;
}

/// <summary>A law or standard that the rule rests on. The document must stand in references.json.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property, AllowMultiple = true)]
public sealed class CitesAttribute(string reference, string? clause = null) : Attribute
{
    /// <summary>Id of the document.</summary>
    public string Reference { get; } = reference;

    /// <summary>The clause.</summary>
    public string? Clause { get; } = clause;
}

/// <summary>The rule rests on common practice of the trade and has no published source.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class CommonPracticeAttribute : Attribute;

/// <summary>
/// The members that settle whether the rule applies. While one of them is absent and the answer hangs on it, the rule is missing
/// its evidence; it is never taken as not applicable.
/// </summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class AppliesByAttribute(params string[] pointers) : Attribute
{
    /// <summary>JSON Pointers into the record.</summary>
    public IReadOnlyList<string> Pointers { get; } = pointers;
}

/// <summary>The list or section that the rule's subjects come from. Absent while the rule applies: missing, never silence.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class ExpectsAttribute(string pointer) : Attribute
{
    /// <summary>JSON Pointer into the record.</summary>
    public string Pointer { get; } = pointer;
}

/// <summary>The inference rule whose conclusions this one matches: it can say nothing without it.</summary>
[AttributeUsage(AttributeTargets.Class, AllowMultiple = true)]
public sealed class FollowsAttribute(string ruleId) : Attribute
{
    /// <summary>Id of that rule.</summary>
    public string RuleId { get; } = ruleId;
}

/// <summary>How far the rule covers its own demand, the record being true.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class CoverageAttribute(Coverage coverage, string why) : Attribute
{
    /// <summary>How far.</summary>
    public Coverage Coverage { get; } = coverage;

    /// <summary>A few words why.</summary>
    public string Why { get; } = why;
}

/// <summary>The days on which the rule is in force, both included; without this attribute, always. Dates as yyyy-MM-dd.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class InForceAttribute : Attribute
{
    /// <summary>First day.</summary>
    public string? From { get; init; }

    /// <summary>Last day.</summary>
    public string? To { get; init; }
}

/// <summary>
/// Further places at which an engineer may record the danger that the rule finds, besides what it judges and the members that it reads:
/// products in the room may be recorded at the room air, or at the flue that lets them out.
/// </summary>
/// <param name="places">JSON Pointers; what stands below counts. Empty: anywhere in the record.</param>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Property)]
public sealed class AlsoRecordedAtAttribute(params string[] places) : Attribute
{
    /// <summary>The places.</summary>
    public IReadOnlyList<string> Places { get; } = places;
}
