using System.Runtime.InteropServices;
using Findings;

namespace Kernel;

/// <summary>What one visit owes, part by part, as the rules of the set "duties" say. A part is <c>kind/part</c>, or the kind alone.</summary>
public sealed class OwedDuties
{
    private readonly List<DutyFact> _facts = [];
    private readonly List<Called> _calls = [];
    private readonly List<DutyCause> _shown = [];
    private readonly Dictionary<string, Weight> _weights = new(StringComparer.Ordinal);
    private HashSet<string>? _putOff;
    private HashSet<string>? _deferred;
    private HashSet<string>? _contradicted;
    private int _taken;

    /// <summary>Were the duties asked, each without a failure? Until then everything that a rule asks for is a must.</summary>
    public bool IsKnown { get; private set; }

    /// <summary>What silence about each part weighs that is owed.</summary>
    public IReadOnlyDictionary<string, Weight> Weights => _weights;

    /// <summary>Everything that is called for, by the ids of the rules that call.</summary>
    internal IReadOnlyList<Called> Calls => _calls;

    /// <summary>Everything that was inferred.</summary>
    internal IReadOnlyList<DutyFact> Facts => _facts;

    /// <summary>Everything of the record that shows a fact on which a rule may call, by the ids of the rules that saw it and then as they did.</summary>
    internal IReadOnlyList<DutyCause> Shown => _shown;

    /// <summary><paramref name="showing"/> shows <paramref name="what"/>; true where nothing did before.</summary>
    internal bool Show<T>(T what, Showing showing)
        where T : notnull
    {
        foreach (var known in _facts)
        {
            if (known is DutyFact<T> same && EqualityComparer<T>.Default.Equals(same.What, what))
            {
                known.Shown.Add(showing);
                return false;
            }
        }

        var fact = new DutyFact<T>(what);
        fact.Shown.Add(showing);
        _facts.Add(fact);
        return true;
    }

    /// <summary>The facts that were not taken yet.</summary>
    internal List<DutyFact> TakeFacts()
    {
        var taken = _facts[_taken..];
        _taken = _facts.Count;
        return taken;
    }

    /// <summary><paramref name="rule"/> calls, because of <paramref name="fact"/> or of the visit alone.</summary>
    internal void Hear(DutyCallRule rule, JudgedVisit visit, DutyFact? fact = null)
    {
        foreach (var call in rule.Calls)
        {
            foreach (var (parts, because) in call.IsFor(visit) ? call.Heard(rule, visit) : [])
                _calls.Add(new Called(rule, fact, call, parts, because, _calls.Count));
        }
    }

    /// <summary>
    /// What was called for is owed. It is put in order first, since the engine calls in none that could be relied on. Said more than once, the
    /// graver weight counts.
    /// </summary>
    /// <param name="isKnown">Were all asked, each without a failure?</param>
    internal void Settle(bool isKnown)
    {
        IsKnown = isKnown;
        SettleShown();
        _weights.EnsureCapacity(_calls.Count * 2);
        _calls.Sort(Called.InOrder);
        DropWhatIsOwedAnyway();
        foreach (var called in _calls)
        {
            if (called.Call.Weight is null || called.Call.IsPutOffAgain)
                (_putOff ??= new HashSet<string>(StringComparer.Ordinal)).UnionWith(called.Parts);
            if (called.Call.Weight is not { } weight)
                continue;

            foreach (var part in called.Parts)
            {
                ref var known = ref CollectionsMarshal.GetValueRefOrAddDefault(_weights, part, out _);
                known = weight > known ? weight : known;
            }
        }
    }

    /// <summary>What was put off before excuses nothing that the visit calls for by itself.</summary>
    private void DropWhatIsOwedAnyway()
    {
        if (!_calls.Exists(called => called.Call.IsPutOffAgain))
            return;

        var owed = _calls.Where(called => called.Call is { Weight: not null, IsPutOffAgain: false }).SelectMany(called => called.Parts).ToHashSet(StringComparer.Ordinal);
        foreach (var (place, called) in _calls.Index().Where(entry => entry.Item.Call.IsPutOffAgain).ToList())
            _calls[place] = called with { Parts = [.. called.Parts.Where(part => !owed.Contains(part))] };
        _calls.RemoveAll(called => called.Parts.Count == 0);
    }

    /// <summary>What calls for <paramref name="part"/>: first the visit, then what shows the facts.</summary>
    internal IEnumerable<DutyCause> CausesOf(string part)
    {
        var calling = _calls.Where(called => called.Call.Weight is not null && called.Parts.Contains(part, StringComparer.Ordinal)).ToList();
        return calling.Where(called => called.Fact is null).Select(called => called.Because)
            .Concat(calling.SelectMany(called => called.Fact?.Shown ?? []).OrderBy(shown => shown.Index).Select(shown => shown.Because));
    }

    private void SettleShown()
    {
        List<Showing> all = [];
        foreach (var fact in _facts)
            all.AddRange(fact.Shown);
        all.Sort(Showing.InOrder);
        foreach (var shown in all)
        {
            shown.Index = _shown.IndexOf(shown.Because);
            if (shown.Index >= 0)
                continue;
            shown.Index = _shown.Count;
            _shown.Add(shown.Because);
        }
    }

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

    /// <summary>Parts, or whole kinds, that rest on what the record itself speaks against, whether they are owed or not.</summary>
    internal IReadOnlyCollection<string> Contradicted => _contradicted ?? (IReadOnlyCollection<string>)[];

    /// <summary>These rest on what the record itself speaks against.</summary>
    internal void Contradict(IReadOnlyList<string> parts)
    {
        if (parts.Count > 0)
            (_contradicted ??= new HashSet<string>(StringComparer.Ordinal)).UnionWith(parts);
    }

    /// <summary>What silence about the member at <paramref name="pointer"/> weighs, of what <paramref name="rule"/> asks for.</summary>
    public Silence Of(RuleInfo rule, string pointer)
    {
        ArgumentNullException.ThrowIfNull(rule);
        if (!IsKnown || rule.Serves.Count == 0)
            return Silence.Must;

        var gravest = Silence.NotAsked;
        var isNamed = IsNamed(rule.Serves, pointer);
        foreach (var serves in rule.Serves)
        {
            if ((isNamed ? IsOf(serves, pointer) : serves.Of is null) && _weights.TryGetValue(serves.Part, out var weight))
                gravest = Graver(gravest, IsPutOff(serves.Part) ? Silence.PutOff : weight < serves.AtMost ? (Silence)(int)weight + 2 : (Silence)(int)serves.AtMost + 2);
        }

        return gravest;
    }

    private static bool IsNamed(IReadOnlyList<ServesAttribute> all, string pointer)
    {
        foreach (var serves in all)
        {
            if (IsOf(serves, pointer))
                return true;
        }

        return false;
    }

    private static bool IsOf(ServesAttribute serves, string pointer) => serves.Of is { } member && IsAt(member, pointer);

    // As far as the shorter of the two reaches.
    private static bool IsAt(ReadOnlySpan<char> pattern, ReadOnlySpan<char> pointer)
    {
        if (!pattern.Contains('*'))
            return pattern.SequenceEqual(pointer);

        var segments = pointer.Split('/');
        foreach (var segment in pattern.Split('/'))
        {
            if (!segments.MoveNext())
                return true;
            if (pattern[segment] is not "*" && !pattern[segment].SequenceEqual(pointer[segments.Current]))
                return false;
        }

        return true;
    }

    private static Silence Graver(Silence one, Silence other) => one > other ? one : other;
}

/// <summary>What a rule called for on one visit.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Fact">The fact that made it call; null: the visit alone.</param>
/// <param name="Call">What it called for.</param>
/// <param name="Parts">Which parts of it.</param>
/// <param name="Because">The cause where no fact is.</param>
/// <param name="Place">Where it was heard among all; the calls of one rule are heard in its own order.</param>
internal readonly record struct Called(DutyCallRule Rule, DutyFact? Fact, Call Call, IReadOnlyList<string> Parts, DutyCause Because, int Place)
{
    public static int InOrder(Called one, Called other)
    {
        var byRule = string.CompareOrdinal(one.Rule.Info.Id, other.Rule.Info.Id);
        return byRule != 0 ? byRule : one.Place.CompareTo(other.Place);
    }
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
