using Findings;

namespace Kernel;

/// <summary>What one visit owes, part by part, as the rules of the set "duties" say. A part is <c>kind/part</c>, or the kind alone.</summary>
public sealed class OwedDuties
{
    private readonly Dictionary<string, Owed> _byPart = new(StringComparer.Ordinal);
    private HashSet<string>? _putOff;
    private HashSet<string>? _deferred;

    /// <summary>Were the duties asked, each without a failure? Until then everything that a rule asks for is a must.</summary>
    public bool IsKnown { get; internal set; }

    /// <summary>Everything that is owed, by part.</summary>
    public IReadOnlyDictionary<string, Owed> All => _byPart;

    /// <summary>The visit owes <paramref name="part"/>. Said more than once, the graver weight counts.</summary>
    /// <param name="part">The part of a duty.</param>
    /// <param name="weight">What silence about it weighs.</param>
    /// <param name="because">What calls for it.</param>
    /// <param name="by">The rule that says so.</param>
    public void Owe(string part, Weight weight, DutyCause because, RuleInfo by)
    {
        if (!_byPart.TryGetValue(part, out var owed))
            _byPart[part] = owed = new Owed(weight);
        owed.Add(weight, because, by);
    }

    /// <summary>The <paramref name="parts"/> cannot be seen on this visit, and are put off.</summary>
    public void PutOff(IEnumerable<string> parts) => (_putOff ??= new HashSet<string>(StringComparer.Ordinal)).UnionWith(parts);

    /// <summary>Is <paramref name="part"/> put off?</summary>
    public bool IsPutOff(string part) => _putOff?.Contains(part) == true;

    /// <summary>Something of <paramref name="rule"/>'s parts is absent, and was put off.</summary>
    internal void Defer(RuleInfo rule)
    {
        foreach (var serves in rule.Serves)
        {
            if (IsPutOff(serves.Part))
                (_deferred ??= new HashSet<string>(StringComparer.Ordinal)).Add(serves.Part);
        }
    }

    /// <summary>Is something of <paramref name="part"/> absent and put off? What was seen before the boiler was left off is not.</summary>
    public bool IsDeferred(string part) => _deferred?.Contains(part) == true;

    /// <summary>What silence about the member at <paramref name="pointer"/> weighs, of what <paramref name="rule"/> asks for.</summary>
    public Silence Of(RuleInfo rule, string pointer)
    {
        ArgumentNullException.ThrowIfNull(rule);
        if (!IsKnown || rule.Serves.Count == 0)
            return Silence.Must;

        var gravest = Silence.NotAsked;
        var isNamed = rule.Serves.Any(serves => IsOf(serves, pointer));
        foreach (var serves in rule.Serves)
        {
            if (isNamed == IsOf(serves, pointer) && _byPart.TryGetValue(serves.Part, out var owed))
                gravest = Graver(gravest, IsPutOff(serves.Part) ? Silence.PutOff : owed.Weight < serves.AtMost ? (Silence)(int)owed.Weight + 2 : (Silence)(int)serves.AtMost + 2);
        }

        return gravest;
    }

    private static bool IsOf(ServesAttribute serves, string pointer) => serves.Of is { } member
        && (member == pointer || (member.Contains('*', StringComparison.Ordinal) && member.Split('/').Zip(pointer.Split('/')).All(pair => pair.First == "*" || pair.First == pair.Second)));

    private static Silence Graver(Silence one, Silence other) => one > other ? one : other;
}

/// <summary>What the silence of a record about something means on one visit, the gravest last.</summary>
public enum Silence
{
    /// <summary>The visit does not call for it.</summary>
    NotAsked,

    /// <summary>The visit calls for it, and it is put off until the boiler is used again.</summary>
    PutOff,

    /// <summary>As <see cref="Weight.Should"/>.</summary>
    Should,

    /// <summary>As <see cref="Weight.Must"/>.</summary>
    Must,
}

/// <summary>A part of a duty that is owed.</summary>
/// <param name="weight">What silence about it weighs.</param>
public sealed class Owed(Weight weight)
{
    private readonly List<DutyCause> _because = [];
    private readonly List<RuleInfo> _by = [];

    /// <summary>What silence about it weighs.</summary>
    public Weight Weight { get; private set; } = weight;

    /// <summary>What calls for it.</summary>
    public IReadOnlyList<DutyCause> Because => _because;

    /// <summary>The rules that call for it.</summary>
    public IReadOnlyList<RuleInfo> By => _by;

    internal void Add(Weight weight, DutyCause because, RuleInfo by)
    {
        if (weight > Weight)
            Weight = weight;
        if (!_because.Contains(because))
            _because.Add(because);
        if (!_by.Contains(by))
            _by.Add(by);
    }
}
