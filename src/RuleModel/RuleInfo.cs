using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using NRules.Fluent.Dsl;

namespace RuleModel;

/// <summary>What a rule says of itself, read from its attributes once.</summary>
public sealed class RuleInfo
{
    private static readonly ConcurrentDictionary<Type, RuleInfo> OfTypes = new();
    private static int s_made;

    private RuleInfo(Type type)
    {
        Number = Interlocked.Increment(ref s_made) - 1;
        Type = type;
        Id = TextOf<NameAttribute>(type);
        Title = TextOf<DescriptionAttribute>(type);
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

    /// <summary>A number of its class's own in this process, counted from 0: what is kept for each rule is kept in an array.</summary>
    public int Number { get; }

    /// <summary>The highest number given so far.</summary>
    public static int HighestNumber => Volatile.Read(ref s_made) - 1;

    /// <summary>The rule's class.</summary>
    public Type Type { get; }

    /// <summary>Speaking id, never reused.</summary>
    public string Id { get; }

    /// <summary>What it demands, in words.</summary>
    public string Title { get; }

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
    public static RuleInfo Of(Type type) => OfTypes.GetOrAdd(type, static type => new RuleInfo(type));

    /// <summary>Is the rule in force on <paramref name="day"/>?</summary>
    public bool IsInForce(DateOnly day) => InForceFrom <= day && day <= InForceTo;

    // The engine's own attributes keep their text to themselves.
    private static string TextOf<T>(Type type) =>
        type.CustomAttributes.FirstOrDefault(data => data.AttributeType == typeof(T))?.ConstructorArguments[0].Value as string ?? "";

    private static DateOnly? Day(string? text) =>
        text is null ? null : DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
