using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Kernel;

/// <summary>What a rule says of itself, read from its attributes once.</summary>
public sealed class RuleInfo
{
    // Holds no type, so that a rule assembly that was loaded for a time can go again.
    private static readonly ConditionalWeakTable<Type, RuleInfo> OfTypes = [];

    private RuleInfo(Type type)
    {
        Type = type;
        Id = type.GetCustomAttribute<IdAttribute>()?.Id ?? "";
        Title = type.GetCustomAttribute<TitleAttribute>()?.Title ?? "";
        Why = type.GetCustomAttribute<WhyAttribute>()?.Why ?? "";
        Serves = [.. type.GetCustomAttributes<ServesAttribute>()];
        Uses = type.GetCustomAttribute<UsesAttribute>()?.Limits ?? [];
        Topic = type.GetCustomAttribute<TopicAttribute>()?.Topic ?? "";
        Citations = [.. type.GetCustomAttributes<CitesAttribute>()];
        IsCommonPractice = type.IsDefined(typeof(CommonPracticeAttribute));
        Coverage = type.GetCustomAttribute<CoverageAttribute>();
        AppliesBy = type.GetCustomAttribute<AppliesByAttribute>()?.Pointers ?? [];
        Follows = [.. type.GetCustomAttributes<FollowsAttribute>().Select(follows => follows.RuleId)];
        Expects = type.GetCustomAttribute<ExpectsAttribute>()?.Pointer;
        var inForce = type.GetCustomAttribute<InForceAttribute>();
        InForceFrom = Day(inForce?.From) ?? DateOnly.MinValue;
        InForceTo = Day(inForce?.To) ?? DateOnly.MaxValue;
    }

    /// <summary>The rule's class.</summary>
    public Type Type { get; }

    /// <summary>Speaking id, never reused.</summary>
    public string Id { get; }

    /// <summary>What it demands, in words.</summary>
    public string Title { get; }

    /// <summary>Why it is asked, in two sentences.</summary>
    public string Why { get; }

    /// <summary>Ids of the limits that it reads.</summary>
    public IReadOnlyList<string> Uses { get; }

    /// <summary>The parts of duties that it serves; none: what it asks for is asked of every visit.</summary>
    public IReadOnlyList<ServesAttribute> Serves { get; }

    /// <summary>Its subject area.</summary>
    public string Topic { get; }

    /// <summary>The laws and standards that it rests on.</summary>
    public IReadOnlyList<CitesAttribute> Citations { get; }

    /// <summary>True when it rests on common practice.</summary>
    public bool IsCommonPractice { get; }

    /// <summary>How far it covers its demand; null is refused by the catalogue.</summary>
    public CoverageAttribute? Coverage { get; }

    /// <summary>The members that settle whether it applies.</summary>
    public IReadOnlyList<string> AppliesBy { get; }

    /// <summary>Ids of the inference rules whose conclusions it matches.</summary>
    public IReadOnlyList<string> Follows { get; }

    /// <summary>Where its subjects come from.</summary>
    public string? Expects { get; }

    /// <summary>First day in force.</summary>
    public DateOnly InForceFrom { get; }

    /// <summary>Last day in force.</summary>
    public DateOnly InForceTo { get; }

    /// <summary>Reads the attributes of <paramref name="type"/>; absent ones stay empty and are refused by the catalogue.</summary>
    public static RuleInfo Of(Type type) => OfTypes.GetValue(type, static type => new RuleInfo(type));

    /// <summary>Is the rule in force on <paramref name="day"/>?</summary>
    public bool IsInForce(DateOnly day) => InForceFrom <= day && day <= InForceTo;

    private static DateOnly? Day(string? text) =>
        text is null ? null : DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
