using System.Buffers;
using System.Runtime.InteropServices;
using Findings;
using Kernel.Catalogues;

namespace Kernel.Engine;

/// <summary>Puts the answers about one visit together: sorted findings, questions, duties not yet due, closing, hashes.</summary>
/// <param name="catalogue">The rules.</param>
/// <param name="visit">What was judged.</param>
/// <param name="answers">Every answer.</param>
/// <param name="rules">The rule of each of them; null for what no rule says.</param>
/// <param name="open">Those of them that ask for something or set a day.</param>
internal sealed class EvaluationBuilder(RuleCatalogue catalogue, JudgedVisit visit, List<Finding> answers, List<RuleFace?> rules, List<OpenAnswer> open)
{
    public Evaluation Build(string engineVersion)
    {
        var closing = Closing();
        var findings = InOrder();
        var counts = OutcomeCounts.Of(findings);
        var questions = Questions();
        var evaluation = new Evaluation
        {
            RecordId = visit.RecordId,
            Outcome = Outcomes.Combine(counts, questions.Count > 0),
            Closing = closing,
            AsOf = visit.AsOf,
            LookedAtOn = visit.LookedAtOn,
            RuleSet = catalogue.Info,
            EngineVersion = engineVersion,
            Context = visit.Context,
            InputHash = Hashes.OfInput(visit),
            Counts = counts,
            Findings = findings,
            Missing = questions,
            Due = Due(),
            Figures = visit.Figures,
            Cautions = UsualCautions.For(catalogue.Header, visit.AsOf),
        };
        return evaluation with { ResultHash = Hashes.OfResult(evaluation) };
    }

    /// <summary>Gravest first, then by topic and rule, then as the rule gave them, which is their order in the record.</summary>
    private List<Finding> InOrder()
    {
        var findings = CollectionsMarshal.AsSpan(answers);
        var places = ArrayPool<long>.Shared.Rent(findings.Length);
        for (var i = 0; i < findings.Length; i++)
            places[i] = ((long)findings[i].Outcome << 48) + ((long)(rules[i]?.Rank ?? 0) << 24) + i;

        places.AsSpan(0, findings.Length).Sort(findings);
        ArrayPool<long>.Shared.Return(places);
        return answers;
    }

    private IReadOnlyList<MissingItem> Questions()
    {
        List<(string, string)>? asked = null;
        foreach (var (finding, verdict) in open)
        {
            foreach (var pointer in verdict.Missing)
                (asked ??= []).Add((pointer, finding.RuleId));
        }

        return asked is null ? [] : MissingList.Of(asked, visit.Model);
    }

    private IReadOnlyList<DueItem> Due()
    {
        List<DueItem>? due = null;
        foreach (var (finding, verdict) in open)
        {
            if (verdict.Due is var (what, by))
                (due ??= []).Add(new DueItem { What = what, By = by, RuleId = finding.RuleId, Reference = finding.References is [var first, ..] ? first : null });
        }

        return due is null ? [] : [.. due.OrderBy(item => item.By).ThenBy(item => item.RuleId, StringComparer.Ordinal)];
    }

    /// <summary>What stands in the way: a rule that failed, evidence that is waited for, an unsafe finding that was not dealt with.</summary>
    private Closing Closing()
    {
        var blocking = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (finding, rule) in answers.Zip(rules))
        {
            if (finding.Outcome is Outcome.Error || (finding.Outcome is Outcome.Unsafe && !IsDealtWith(finding, rule)) || (finding.Outcome is Outcome.Missing && visit.IsWaitedFor(finding)))
                blocking.Add(finding.RuleId);
        }

        foreach (var (finding, verdict) in open)
        {
            if (verdict.Missing.Count > 0 && visit.IsWaitedFor(finding))
                blocking.Add(finding.RuleId);
        }

        return new Closing { Allowed = blocking.Count == 0, BlockedBy = [.. blocking] };
    }

    // What follows from findings, such as a danger left in use, ends with them and not by what was done about one.
    private bool IsDealtWith(Finding finding, RuleFace? rule) => rule?.Rule is not InferenceRule && visit.IsDealtWith(finding);
}
