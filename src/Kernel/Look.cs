using System.Runtime.CompilerServices;
using Findings;

namespace Kernel;

/// <summary>
/// One look at a subject: it notes what a rule reads and asks for what is absent, so that a verdict always carries its evidence.
/// A member is named by the expression that reads it: <c>look.Lacks(joint.Renewed, out var renewed)</c> notes
/// <c>/disturbedJoints/0/renewed</c>. Expressions that begin with <c>visit.Record.</c> name a member of the record; in any other, what
/// stands before the first dot is the subject itself.
/// </summary>
/// <remarks>Of most answers nobody reads more than the outcome, so a quiet look keeps no evidence and no sentence of a pass.</remarks>
public sealed class Look
{
    private readonly bool _isQuiet;
    private readonly IRecordModel? _model;
    private List<Noted>? _noted;
    private List<string>? _missing;

    /// <summary>A look that keeps all it sees.</summary>
    /// <param name="subject">JSON Pointer of the subject.</param>
    /// <param name="model">The members that a record can have.</param>
    public Look(string subject, IRecordModel model)
        : this(subject, model, isQuiet: false)
    {
    }

    private Look(string subject, IRecordModel? model, bool isQuiet) => (Subject, _model, _isQuiet) = (subject, model, isQuiet);

    /// <summary>JSON Pointer of the subject.</summary>
    public string Subject { get; private set; }

    /// <summary>A look that knows no record: it can say something, and neither note nor ask for a member.</summary>
    internal static Look AtNothing { get; } = new("", model: null, isQuiet: false);

    /// <summary>A look that keeps only what decides. It serves one subject after the other.</summary>
    internal static Look Quiet(IRecordModel model) => new("", model, isQuiet: true);

    /// <summary>The look for the next subject.</summary>
    internal Look At(string subject)
    {
        if (!_isQuiet)
            return new Look(subject, _model, isQuiet: false);

        (Subject, _missing) = (subject, null);
        return this;
    }

    /// <summary>
    /// True when <paramref name="value"/> is absent. Join several with <c>|</c>, not <c>||</c>, so that everything absent is asked for at once.
    /// </summary>
    public bool Lacks<T>([NamesMember] T? value, out T known, [CallerArgumentExpression(nameof(value))] string path = "")
        where T : struct
    {
        known = value.GetValueOrDefault();
        return value is null ? AskFor(path) : Keep(known, path);
    }

    /// <inheritdoc cref="Lacks{T}(T?, out T, string)" />
    public bool Lacks([NamesMember] string? value, out string known, [CallerArgumentExpression(nameof(value))] string path = "")
    {
        known = value ?? "";
        return string.IsNullOrWhiteSpace(value) ? AskFor(path) : Keep(value, path);
    }

    /// <summary>Notes a value as evidence without asking for it; gives it back.</summary>
    public T? Note<T>([NamesMember] T? value, [CallerArgumentExpression(nameof(value))] string path = "")
    {
        if (value is not null)
            Keep(value, path);

        return value;
    }

    /// <summary>
    /// Notes a value that only decides how grave it is: it is shown as evidence, and a defect that names it is no word on what is found.
    /// </summary>
    public T? NoteForClass<T>([NamesMember] T? value, [CallerArgumentExpression(nameof(value))] string path = "")
    {
        if (value is not null)
            Keep(value, path, isForClass: true);

        return value;
    }

    /// <summary>The record shows what the rule demands.</summary>
    public Verdict Pass([InterpolatedStringHandlerArgument("")] SentenceIfHeard message) =>
        _isQuiet ? Verdict.QuietPass : new(Outcome.Pass, message.Said, this);

    /// <summary>Not as it should be, and no danger on its own.</summary>
    public Verdict Advisory(FormattableString message) => new(Outcome.Advisory, message, this);

    /// <summary>A danger; <paramref name="expected"/> is the class that the trade's procedure would be expected to give.</summary>
    public Verdict Unsafe(FormattableString message, ExpectedClass expected = ExpectedClass.AtRisk) =>
        new(Outcome.Unsafe, message, this, expectedClass: expected);

    /// <summary>What the rule needs is absent: everything that <c>Lacks</c> found so far.</summary>
    public Verdict Missing() => Missing($"the record does not say enough to judge this");

    /// <summary>As above with a sentence of its own, and with <paramref name="pointers"/> to ask for besides.</summary>
    public Verdict Missing(FormattableString message, params IReadOnlyList<string> pointers) =>
        new Verdict(Outcome.Missing, message, this, _missing ?? []).AndMissing(pointers);

    /// <summary>The rule does not concern this subject.</summary>
    public Verdict NotApplicable([InterpolatedStringHandlerArgument("")] SentenceIfHeard reason) =>
        _isQuiet ? Verdict.QuietlyNotApplicable : new(Outcome.NotApplicable, reason.Said, this);

    /// <summary>Does it keep only what decides?</summary>
    internal bool IsQuiet => _isQuiet;

    /// <summary>What was looked at, for whoever reads it; null when nothing was.</summary>
    internal IReadOnlyList<Evidence>? Evidence => _noted?.ConvertAll(noted => noted.Below(Subject, Model));

    /// <summary>The members that a record can have.</summary>
    internal IRecordModel Model => _model ?? throw new InvalidOperationException("A look that knows no record can neither note nor ask for a member.");

    private bool AskFor(string path)
    {
        (_missing ??= []).Add(MemberPath.Of(path).Below(Subject));
        return true;
    }

    private bool Keep<T>(T value, string path, bool isForClass = false)
    {
        if (!_isQuiet)
            (_noted ??= []).Add(new Noted(MemberPath.Of(path), value!, isForClass));
        return false;
    }

    /// <summary>A value as it was read.</summary>
    private readonly record struct Noted(MemberPath Member, object Value, bool IsForClass)
    {
        public Evidence Below(string subject, IRecordModel model)
        {
            var pointer = Member.Below(subject);
            return new Evidence { Pointer = pointer, Value = WireText.Of(Value), Number = Value as decimal?, Unit = model.UnitAt(pointer), IsForClass = IsForClass };
        }
    }
}
