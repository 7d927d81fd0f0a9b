using Findings;

namespace Kernel;

/// <summary>What a rule says of one subject. Made by <see cref="Look"/>.</summary>
public sealed class Verdict : IStatement
{
    private readonly Look? _look;
    private IReadOnlyList<LimitDefinition>? _loosened;

    internal Verdict(Outcome outcome, FormattableString? message, Look? look = null, IReadOnlyList<string>? missing = null, ExpectedClass? expectedClass = null)
    {
        Outcome = outcome;
        Message = message;
        ExpectedClass = expectedClass;
        _look = look;
        Missing = missing ?? [];
    }

    /// <summary>All that a quiet look says of most subjects.</summary>
    internal static Verdict QuietPass { get; } = new(Outcome.Pass, null) { IsShared = true };

    /// <summary>As <see cref="QuietPass"/>.</summary>
    internal static Verdict QuietlyNotApplicable { get; } = new(Outcome.NotApplicable, null) { IsShared = true };

    /// <summary>The rule failed to run; never a pass.</summary>
    public static Verdict Error(FormattableString message) => new(Outcome.Error, message);

    /// <summary>The outcome.</summary>
    public Outcome Outcome { get; private set; }

    /// <inheritdoc />
    public Weight? Weight { get; private set; }

    /// <inheritdoc />
    public bool? NotDone { get; private set; }

    /// <summary>One sentence; put together only when it is read, as a statement's message. Null where a quiet look did not keep it.</summary>
    public FormattableString? Message { get; private set; }

    /// <summary>What was looked at; null when nothing was.</summary>
    public IReadOnlyList<Evidence>? Evidence => _look?.Evidence;

    private bool IsShared { get; init; }

    /// <summary>Pointers of what the rule would need to see.</summary>
    public IReadOnlyList<string> Missing { get; private set; }

    /// <summary>Those of them of which the visit only should show something, where <see cref="Weight"/> is a must.</summary>
    public IReadOnlyList<string> OnlyShould { get; private set; } = [];

    /// <summary>The limit that decided.</summary>
    public Limit? Limit { get; private set; }

    /// <summary>Distance to the limit.</summary>
    public decimal? Margin { get; private set; }

    /// <summary>Probability that the true value conforms, where the instrument's accuracy is stated.</summary>
    public decimal? Conformity { get; private set; }

    /// <summary>The class that the trade's procedure would be expected to give.</summary>
    public ExpectedClass? ExpectedClass { get; private set; }

    /// <summary>Who can be hurt, and what to mind.</summary>
    public string? Caution { get; private set; }

    /// <summary>The work that would put it right.</summary>
    public string? Remedy { get; private set; }

    /// <summary>A duty that is not yet due: what, and the last day for it.</summary>
    public (string What, DateOnly By)? Due { get; private set; }

    /// <inheritdoc />
    public bool? Loosened => _loosened is null ? null : true;

    string? IStatement.Message => field ??= Message is { } sentence ? WireText.Sentence(sentence) + LoosenedInWords : null;

    private string LoosenedInWords => _loosened is null
        ? ""
        : $"; judged with what the deployer has loosened: {string.Join("; ", _loosened.Select(line => line.What))}";

    /// <summary>Is there anything to report?</summary>
    public bool IsProblem => Outcome is not (Outcome.Pass or Outcome.NotApplicable);

    /// <summary>Adds the limit that decided and the distance of <paramref name="value"/> to it.</summary>
    public Verdict Against(Limit limit, decimal? value = null)
    {
        ArgumentNullException.ThrowIfNull(limit);
        var own = Own;
        own.Limit = limit;
        own.Margin = value is { } number ? limit.MarginOf(number) : null;
        return own;
    }

    /// <summary>
    /// The same where the accuracy of <paramref name="value"/> is stated: adds the probability that the true value conforms. The verdict
    /// rests on the limit as it stands; a pass too close to it to be sure of becomes an advisory that says so.
    /// </summary>
    public Verdict Against(Limit limit, decimal value, IDoubt? doubt)
    {
        var own = Against(limit, value);
        own.Conformity = doubt?.ConformityOf(limit, value);
        if (own is { Outcome: Outcome.Pass, Conformity: { } sure } && !doubt!.Guard.Allows(sure))
        {
            own.Outcome = Outcome.Advisory;
            own.Message = Message is null
                ? null
                : (FormattableString)$"{Message}; by the stated accuracy of the instrument the true value is within the limit with a probability of {sure.Beside(doubt.Guard, 2)} only (a plain pass asks for {doubt.Guard.Min})";
            own.Remedy ??= "Measure again with an instrument of better stated accuracy; while the value stays this close, treat it as being on its limit.";
        }

        return own;
    }

    /// <summary>Adds the caution.</summary>
    public Verdict Warn(string caution)
    {
        var own = Own;
        own.Caution = caution;
        return own;
    }

    /// <summary>Adds the remedy.</summary>
    public Verdict Advise(string remedy)
    {
        var own = Own;
        own.Remedy = remedy;
        return own;
    }

    /// <summary>Adds what is missing besides: where a missing thing is itself dangerous, the verdict is unsafe and asks for it too.</summary>
    /// <exception cref="ArgumentException">No record has a member there.</exception>
    public Verdict AndMissing(params IReadOnlyList<string> pointers)
    {
        ArgumentNullException.ThrowIfNull(pointers);
        foreach (var pointer in pointers)
            _ = _look!.Model.UnitAt(pointer);
        var own = Own;
        own.Missing = [.. Missing, .. pointers];
        return own;
    }

    /// <summary>Parts of duties, or whole kinds, that rest on what the record itself speaks against.</summary>
    public IReadOnlyList<string> Contradicted { get; private set; } = [];

    /// <summary>Adds parts of duties, or whole kinds, that rest on what the record itself speaks against: what is owed of them is shown as contradicted while this is asked for.</summary>
    public Verdict Contradicting(params IReadOnlyList<string> parts)
    {
        var own = Own;
        own.Contradicted = parts;
        return own;
    }

    /// <summary>The same with the limits that were read and that the deployer has loosened: whoever reads the verdict must see them.</summary>
    internal Verdict JudgedWith(IReadOnlyList<LimitDefinition> loosened)
    {
        var same = (Verdict)MemberwiseClone();
        same._loosened = loosened;
        return same;
    }

    /// <summary>The visit does not call for what the rule asks for, and the record has nothing of it.</summary>
    internal static Verdict NotAsked { get; } = new(Outcome.NotApplicable, $"not asked of this visit, and not recorded");

    /// <summary>What the rule asks for can only be seen on a boiler that runs, and this one was left off.</summary>
    internal static Verdict PutOff { get; } = new(Outcome.NotApplicable, $"the boiler was left off: to be done before it is used again");

    /// <summary>The same with what it weighs that something is missing: of <paramref name="must"/>, of what only <paramref name="should"/> be there.</summary>
    internal Verdict Weighing(IReadOnlyList<string> must, IReadOnlyList<string> should)
    {
        var own = (Verdict)MemberwiseClone();
        var isMust = must.Count > 0 || should.Count == 0;
        (own.Weight, own.Missing, own.OnlyShould) = isMust ? (Findings.Weight.Must, must, should) : (Findings.Weight.Should, should, []);
        return own;
    }

    /// <summary>The same as an advisory: nothing is left to ask for, since a reason answers what was.</summary>
    internal Verdict ForReason(string because)
    {
        var own = (Verdict)MemberwiseClone();
        (own.Missing, own.Outcome, own.Message, own.NotDone) = ([], Outcome == Outcome.Missing ? Outcome.Advisory : Outcome, Outcome == Outcome.Missing ? $"not done: {because}" : Message, true);
        return own;
    }

    /// <summary>The same without questions.</summary>
    internal Verdict WithoutQuestions()
    {
        var own = (Verdict)MemberwiseClone();
        own.Missing = [];
        return own;
    }

    /// <summary>Something that was found and that <see cref="PutRight"/> made an advisory of: it is no proof of anything.</summary>
    public bool WasPutRight { get; private set; }

    /// <summary>The same as an advisory that asks for nothing: it was found and put right, and <paramref name="shown"/> says what shows that.</summary>
    public Verdict PutRight(FormattableString shown)
    {
        var own = Own;
        (own.Outcome, own.ExpectedClass, own.Missing, own.WasPutRight) = (Outcome.Advisory, null, [], true);
        own.Message = (FormattableString)$"{Message}; a defect records it as put right, and {shown}";
        return own.Advise("See at the next visit whether it stayed right.");
    }

    /// <summary>Adds a duty that is not yet due.</summary>
    public Verdict DueBy(DateOnly day, string what)
    {
        var own = Own;
        own.Due = (what, day);
        return own;
    }

    private Verdict Own => IsShared ? new Verdict(Outcome, Message) : this;
}
