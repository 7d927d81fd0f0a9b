using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Kernel;

/// <summary>What a rule says of itself, read from its attributes once.</summary>
public sealed class RuleInfo
{
    // Holds no class or row, so that a rule assembly that was loaded for a time can go again.
    private static readonly ConditionalWeakTable<MemberInfo, RuleInfo> Known = [];

    private RuleInfo(MemberInfo member)
    {
        Member = member;
        Id = member.GetCustomAttribute<IdAttribute>()?.Id ?? "";
        Title = member.GetCustomAttribute<TitleAttribute>()?.Title ?? "";
        Why = member.GetCustomAttribute<WhyAttribute>()?.Why ?? "";
        Serves = [.. member.GetCustomAttributes<ServesAttribute>()];
        AlsoRecordedAt = member.GetCustomAttribute<AlsoRecordedAtAttribute>()?.Places ?? [];
        Uses = member.GetCustomAttribute<UsesAttribute>()?.Limits ?? [];
        Topic = (member.GetCustomAttribute<TopicAttribute>() ?? member.DeclaringType?.GetCustomAttribute<TopicAttribute>())?.Topic ?? "";
        Citations = [.. member.GetCustomAttributes<CitesAttribute>()];
        IsCommonPractice = member.IsDefined(typeof(CommonPracticeAttribute));
        Coverage = member.GetCustomAttribute<CoverageAttribute>();
        AppliesBy = member.GetCustomAttribute<AppliesByAttribute>()?.Pointers ?? [];
        Follows = [.. member.GetCustomAttributes<FollowsAttribute>().Select(follows => follows.RuleId)];
        Expects = member.GetCustomAttribute<ExpectsAttribute>()?.Pointer;
        var inForce = member.GetCustomAttribute<InForceAttribute>();
        InForceFrom = Day(inForce?.From) ?? DateOnly.MinValue;
        InForceTo = Day(inForce?.To) ?? DateOnly.MaxValue;
    }

    /// <summary>Where the rule stands: its class, or its row in an <see cref="IRuleTable"/>.</summary>
    public MemberInfo Member { get; }

    /// <summary>The set in which it stands. A row of a table is a demand.</summary>
    public SetOfRules Set => Member is not Type type ? SetOfRules.Demands
        : typeof(DutyRule).IsAssignableFrom(type) ? SetOfRules.Duties
        : typeof(SituationRule).IsAssignableFrom(type) || typeof(InferenceRule).IsAssignableFrom(type) ? SetOfRules.Situation
        : SetOfRules.Demands;

    /// <summary>The name of its class or row; its cases are called the same.</summary>
    public string Name => Member.Name;

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

    /// <summary>Further places at which the danger that it finds may be recorded as a defect.</summary>
    public IReadOnlyList<string> AlsoRecordedAt { get; }

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

    /// <summary>Reads the attributes of <paramref name="member"/>, a class or a row; absent ones stay empty and are refused by the catalogue.</summary>
    public static RuleInfo Of(MemberInfo member) => Known.GetValue(member, static member => new RuleInfo(member));

    /// <summary>Is the rule in force on <paramref name="day"/>?</summary>
    public bool IsInForce(DateOnly day) => InForceFrom <= day && day <= InForceTo;

    private static DateOnly? Day(string? text) =>
        text is null ? null : DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
