using Findings;

namespace Kernel;

/// <summary>A rule that says what a visit owes, and because of what. Its title is that cause in words, unless a fact is.</summary>
/// <param name="pointer">JSON Pointer of what of the record calls; null: no one member does, or what shows a fact.</param>
public abstract class DutyCallRule(string? pointer) : DutyRule
{
    /// <summary>JSON Pointer of what of the record calls; null: no one member does, or what shows a fact.</summary>
    public string? Pointer => pointer;

    /// <summary>What it calls for.</summary>
    public abstract IReadOnlyList<Call> Calls { get; }
}

/// <summary>A rule that the visit alone makes call.</summary>
public abstract class VisitCallRule(string? pointer) : DutyCallRule(pointer)
{
    internal abstract bool IsCalledBy(JudgedVisit visit);
}

/// <inheritdoc />
/// <typeparam name="TVisit">What the rules see of a visit.</typeparam>
public abstract class VisitCallRule<TVisit>(string? pointer) : VisitCallRule(pointer)
    where TVisit : JudgedVisit
{
    /// <summary>Does this visit call?</summary>
    protected abstract bool IsCalledBy(TVisit visit);

    internal sealed override bool IsCalledBy(JudgedVisit visit) => IsCalledBy((TVisit)visit);
}

/// <summary>A rule that a fact makes call which other rules inferred of the visit.</summary>
public abstract class FactCallRule() : DutyCallRule(pointer: null)
{
    internal abstract bool IsCalledBy(DutyFact fact);
}

/// <inheritdoc />
/// <typeparam name="T">With what kind of facts it chains.</typeparam>
public abstract class FactCallRule<T> : FactCallRule
    where T : notnull
{
    /// <summary>Does it call where this was inferred?</summary>
    protected abstract bool IsCalledBy(T what);

    internal sealed override bool IsCalledBy(DutyFact fact) => fact is DutyFact<T> known && IsCalledBy(known.What);
}

/// <summary>What a rule of the duties calls for: parts of one weight, for one cause.</summary>
/// <param name="weight">What silence about them weighs; null: they cannot be seen on this visit, and are put off.</param>
/// <param name="parts">The parts.</param>
public abstract class Call(Weight? weight, IReadOnlyList<string> parts)
{
    private DutyCause? _because;

    /// <summary>What silence about them weighs; null: they cannot be seen on this visit, and are put off.</summary>
    public Weight? Weight => weight;

    /// <summary>What it calls for.</summary>
    public IReadOnlyList<string> Parts => parts;

    /// <summary>JSON Pointer of what of the record calls for this; null: what makes the rule call.</summary>
    public string? Pointer { get; private protected init; }

    /// <summary>Of which visits only, as the end of a sentence that begins "where"; null: of all that make the rule call.</summary>
    public string? Where { get; private protected init; }

    /// <summary>
    /// Is it called for because an earlier visit put it off, and put off again? Where the visit calls for one of the parts otherwise, this call
    /// says nothing of it: what was put off before excuses nothing that the visit itself owes.
    /// </summary>
    public bool IsPutOffAgain { get; private protected init; }

    internal abstract bool IsFor(JudgedVisit visit);

    /// <summary>What of it this visit calls for, each with its cause where no fact is; <paramref name="rule"/> is the one that this is a call of.</summary>
    internal virtual IEnumerable<CalledParts> Heard(DutyCallRule rule, JudgedVisit visit) =>
        [new CalledParts(parts, _because ??= new DutyCause(Pointer ?? rule.Pointer, rule.Info.Title))];
}

/// <inheritdoc />
/// <typeparam name="TVisit">What the rules see of a visit.</typeparam>
public sealed class Call<TVisit>(Weight? weight, IReadOnlyList<string> parts) : Call(weight, parts)
    where TVisit : JudgedVisit
{
    private Func<TVisit, bool>? _isFor;
    private Func<TVisit, IEnumerable<CalledParts>>? _chosen;

    /// <summary>The same, of some visits only.</summary>
    /// <param name="words">Of which, as the end of a sentence that begins "where".</param>
    /// <param name="isFor">Is this one of them?</param>
    /// <param name="pointer">JSON Pointer of what of the record says so; null: what makes the rule call.</param>
    public Call<TVisit> Only(string words, Func<TVisit, bool> isFor, string? pointer = null) =>
        new(Weight, Parts) { Where = words, Pointer = pointer, IsPutOffAgain = IsPutOffAgain, _isFor = isFor, _chosen = _chosen };

    /// <summary>The same, of those parts only that a visit names, each with a cause that the title of the rule does not say.</summary>
    public Call<TVisit> Choosing(Func<TVisit, IEnumerable<CalledParts>> chosen) =>
        new(Weight, Parts) { Where = Where, Pointer = Pointer, IsPutOffAgain = IsPutOffAgain, _isFor = _isFor, _chosen = chosen };

    /// <summary>The same, put off again: <see cref="Call.IsPutOffAgain"/>.</summary>
    public Call<TVisit> PutOffAgain() => new(Weight, Parts) { Where = Where, Pointer = Pointer, IsPutOffAgain = true, _isFor = _isFor, _chosen = _chosen };

    internal override IEnumerable<CalledParts> Heard(DutyCallRule rule, JudgedVisit visit) => _chosen?.Invoke((TVisit)visit) ?? base.Heard(rule, visit);

    internal override bool IsFor(JudgedVisit visit) => _isFor is null || _isFor((TVisit)visit);
}

/// <summary>Parts that a visit calls for, and because of what.</summary>
/// <param name="Parts">The parts.</param>
/// <param name="Because">The cause where no fact is.</param>
public readonly record struct CalledParts(IReadOnlyList<string> Parts, DutyCause Because);
