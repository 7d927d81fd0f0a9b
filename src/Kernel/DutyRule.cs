using Findings;

namespace Kernel;

/// <summary>
/// A rule of the set "duties". It is a fact of the engine, which joins it with the visit, and where it chains with what other rules of the
/// set inferred. Until all have been asked, each without a failure, nothing falls away.
/// </summary>
public abstract class DutyRule : IComplianceRule
{
    /// <inheritdoc />
    public RuleInfo Info => field ??= RuleInfo.Of(GetType());
}

/// <summary>A rule that infers facts from the visit alone.</summary>
public abstract class DutyFactRule : DutyRule
{
    /// <summary>Notes what this visit shows; true where something of it was shown by nothing before.</summary>
    internal abstract bool Infers(JudgedVisit visit);
}

/// <inheritdoc />
/// <typeparam name="TVisit">What the rules see of a visit.</typeparam>
/// <typeparam name="T">What is inferred.</typeparam>
public abstract class DutyFactRule<TVisit, T> : DutyFactRule
    where TVisit : JudgedVisit
    where T : notnull
{
    /// <summary>What this visit shows, each with what shows it, in the order of the record.</summary>
    protected abstract IEnumerable<(T Fact, string Pointer, string Words)> FactsOf(TVisit visit);

    internal sealed override bool Infers(JudgedVisit visit)
    {
        var (isNew, place) = (false, 0);
        foreach (var (what, pointer, words) in FactsOf((TVisit)visit))
            isNew |= visit.Owed.Show(what, new Showing(Info.Id, place++, new DutyCause(pointer, words)));
        return isNew;
    }
}

/// <summary>What rules of the duties inferred of a visit: one fact, on which others call, however much of the record shows it.</summary>
public abstract class DutyFact
{
    /// <summary>What shows it.</summary>
    internal List<Showing> Shown { get; } = [];
}

/// <inheritdoc />
/// <typeparam name="T">Of what kind it is.</typeparam>
public sealed class DutyFact<T>(T what) : DutyFact
    where T : notnull
{
    /// <summary>What was inferred.</summary>
    public T What { get; } = what;
}

/// <summary>Something of the record that shows a fact.</summary>
/// <param name="ruleId">The rule that saw it.</param>
/// <param name="place">Where it stands among all that the rule saw.</param>
/// <param name="because">What it is.</param>
internal sealed class Showing(string ruleId, int place, DutyCause because)
{
    public DutyCause Because => because;

    /// <summary>Where <see cref="Because"/> stands among all that shows anything of the visit.</summary>
    public int Index { get; set; }

    public static int InOrder(Showing one, Showing other)
    {
        var byRule = string.CompareOrdinal(one.RuleId, other.RuleId);
        return byRule != 0 ? byRule : one.Place.CompareTo(other.Place);
    }

    /// <summary>The rule that saw it.</summary>
    public string RuleId => ruleId;

    private int Place => place;
}
