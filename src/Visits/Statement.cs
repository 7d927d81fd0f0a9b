using System.Reflection;
using Findings;
using Kernel;

namespace Visits;

/// <summary>
/// A rule that asks one yes or no of the record and reads no limit for it: one row of a <see cref="StatementTable"/>. Where the record does
/// not say, the member is asked for.
/// </summary>
public sealed class Statement : VisitRule
{
    private readonly Func<Visit, bool?> _member;
    private readonly string _expression, _pointer;
    private readonly Func<Visit, bool?>? _applies;
    private readonly Reply _yes, _no;

    internal Statement(PropertyInfo row, Func<Visit, bool?> member, string expression, bool aboutItself, Func<Visit, bool?>? applies, Reply yes, Reply no)
    {
        (Info, _member, _expression, _applies, _yes, _no) = (RuleInfo.Of(row), member, expression, applies, yes, no);
        _pointer = MemberPath.Of(expression).Below("");
        SubjectPointer = aboutItself ? _pointer : _pointer[.._pointer.LastIndexOf('/')];
    }

    /// <inheritdoc />
    public override RuleInfo Info { get; }

    /// <inheritdoc />
    protected override string SubjectPointer { get; }

    /// <inheritdoc />
    protected override IEnumerable<string> Gaps
    {
        get
        {
            if ((_yes.Outcome == Outcome.Pass) == (_no.Outcome == Outcome.Pass))
                yield return "passes both a yes and a no, or neither";
            foreach (var gap in _yes.Gaps.Select(gap => $"answers a yes {gap}").Concat(_no.Gaps.Select(gap => $"answers a no {gap}")))
                yield return gap;
        }
    }

    /// <inheritdoc />
    protected override bool? Applies(Visit visit) => _applies is null ? true : _applies(visit);

    /// <inheritdoc />
    protected override Verdict Assess(Visit visit, Look look) =>
        look.Lacks(_member(visit), out var isSo, _expression) ? look.Missing() : (isSo ? _yes : _no).To(visit, look, _pointer);
}

/// <summary>What a row says to a yes, or to a no.</summary>
public sealed class Reply
{
    private readonly string _sentence;
    private readonly string? _caution, _remedy;
    private readonly Func<Look, Visit, ExpectedClass>? _class;
    private readonly Func<Visit, IReadOnlyList<string>>? _asks;

    internal Reply(
        Outcome outcome, string sentence, string? caution = null, string? remedy = null, Func<Look, Visit, ExpectedClass>? expected = null,
        Func<Visit, IReadOnlyList<string>>? asks = null) =>
        (Outcome, _sentence, _caution, _remedy, _class, _asks) = (outcome, sentence, caution, remedy, expected, asks);

    internal Outcome Outcome { get; }

    internal IEnumerable<string> Gaps
    {
        get
        {
            if (string.IsNullOrWhiteSpace(_sentence))
                yield return "without a sentence";
            if (Outcome == Outcome.Unsafe && string.IsNullOrWhiteSpace(_caution))
                yield return "with a danger and no caution";
            if (Outcome != Outcome.Pass && string.IsNullOrWhiteSpace(_remedy))
                yield return "with a fault and no remedy";
        }
    }

    /// <summary>The verdict on a record that says this of the member at <paramref name="pointer"/>.</summary>
    internal Verdict To(Visit visit, Look look, string pointer)
    {
        if (Outcome == Outcome.Pass)
            return look.Pass($"{_sentence}");

        var verdict = (Outcome switch
        {
            Outcome.Unsafe => look.Unsafe($"{_sentence}", _class!(look, visit)),
            Outcome.Missing => look.Missing($"{_sentence}", pointer),
            _ => look.Advisory($"{_sentence}").AndMissing(_asks?.Invoke(visit) ?? []),
        }).Advise(_remedy!);
        return _caution is null ? verdict : verdict.Warn(_caution);
    }
}
