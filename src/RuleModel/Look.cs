using System.Runtime.CompilerServices;
using Findings;
using ServiceRecords;

namespace RuleModel;

/// <summary>
/// One look at a subject: it notes what a rule reads and asks for what is absent, so that a verdict always carries its evidence.
/// A member is named by the expression that reads it: <c>look.Lacks(joint.Renewed, out var renewed)</c> notes
/// <c>/disturbedJoints/0/renewed</c>. Expressions that begin with <c>visit.Record.</c> name a member of the record; in any other, what
/// stands before the first dot is the subject itself.
/// </summary>
public sealed class Look(string subject)
{
    private const int UsuallyNoted = 2;

    private List<Noted>? _noted;
    private List<string>? _missing;

    /// <summary>JSON Pointer of the subject.</summary>
    public string Subject => subject;

    /// <summary>
    /// True when <paramref name="value"/> is absent. Join several with <c>|</c>, not <c>||</c>, so that everything absent is asked for at once.
    /// </summary>
    public bool Lacks<T>(T? value, out T known, [CallerArgumentExpression(nameof(value))] string path = "")
        where T : struct
    {
        known = value.GetValueOrDefault();
        return Absent(value, path);
    }

    /// <inheritdoc cref="Lacks{T}(T?, out T, string)" />
    public bool Lacks(string? value, out string known, [CallerArgumentExpression(nameof(value))] string path = "")
    {
        known = value ?? "";
        return Absent(string.IsNullOrWhiteSpace(value) ? null : value, path);
    }

    /// <summary>Notes a value as evidence without asking for it; gives it back.</summary>
    public T? Note<T>(T? value, [CallerArgumentExpression(nameof(value))] string path = "")
    {
        if (value is not null)
            Keep(MemberPath.Of(path), value);

        return value;
    }

    /// <summary>How sure a number of the record is, by the accuracy that its instrument states; null where none is stated.</summary>
    public Doubt? DoubtOf(Visit visit, decimal? value, [CallerArgumentExpression(nameof(value))] string path = "")
    {
        ArgumentNullException.ThrowIfNull(visit);
        return value is { } number ? visit.DoubtOf(StatedAccuracy.UncertaintyOf(visit, MemberPath.Of(path).Below(subject), number)) : null;
    }

    /// <summary>How sure the figure of <paramref name="computation"/> for this subject is; null where it has no uncertainty.</summary>
    public Doubt? DoubtOf(Visit visit, Computation computation)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(computation);
        if (!visit.StatesAccuracy)
            return null;

        var figure = visit.Figures.FirstOrDefault(figure => figure.Name == computation.Name && figure.Subject == subject);
        return visit.DoubtOf((double?)figure?.Uncertainty);
    }

    /// <summary>The record shows what the rule demands.</summary>
    public Verdict Pass(FormattableString message) => new(Outcome.Pass, message, this);

    /// <summary>Not as it should be, and no danger on its own.</summary>
    public Verdict Advisory(FormattableString message) => new(Outcome.Advisory, message, this);

    /// <summary>A danger; <paramref name="expected"/> is the class that the trade's procedure would be expected to give.</summary>
    public Verdict Unsafe(FormattableString message, ExpectedClass expected = ExpectedClass.AtRisk) =>
        new(Outcome.Unsafe, message, this) { ExpectedClass = expected };

    /// <summary>What the rule needs is absent: everything that <c>Lacks</c> found so far.</summary>
    public Verdict Missing() => Missing($"the record does not say enough to judge this");

    /// <summary>As above with a sentence of its own, and with <paramref name="pointers"/> to ask for besides.</summary>
    public Verdict Missing(FormattableString message, params IReadOnlyList<string> pointers) =>
        new Verdict(Outcome.Missing, message, this, _missing ?? []).AndMissing(pointers);

    /// <summary>The rule does not concern this subject.</summary>
    public Verdict NotApplicable(FormattableString reason) => new(Outcome.NotApplicable, reason, this);

    /// <summary>What was looked at, for whoever reads it; null when nothing was.</summary>
    internal IReadOnlyList<Evidence>? Evidence => _noted?.ConvertAll(noted => noted.Below(subject));

    private bool Absent(object? value, string path)
    {
        var member = MemberPath.Of(path);
        if (value is null)
            (_missing ??= []).Add(member.Below(subject));
        else
            Keep(member, value);

        return value is null;
    }

    private void Keep(MemberPath member, object value) => (_noted ??= new List<Noted>(UsuallyNoted)).Add(new Noted(member, value));

    /// <summary>A value as it was read; most are never shown, so it becomes evidence only when it is.</summary>
    private readonly record struct Noted(MemberPath Member, object Value)
    {
        public Evidence Below(string subject)
        {
            var pointer = Member.Below(subject);
            return new Evidence { Pointer = pointer, Value = WireText.Of(Value), Number = Value as decimal?, Unit = RecordMembers.At(pointer).Unit };
        }
    }
}
