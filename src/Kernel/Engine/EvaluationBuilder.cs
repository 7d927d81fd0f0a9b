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
        var blockedBy = Blocking();
        var duties = DutyList.Of(catalogue, visit.Owed, answers, rules);
        var findings = InOrder();
        var counts = OutcomeCounts.Of(findings);
        var questions = Questions(Weight.Must);
        var outcome = Outcomes.Combine(counts, questions.Count > 0);
        var deferrals = DeferralList.Of(catalogue, visit, blockedBy);
        var evaluation = new Evaluation
        {
            RecordId = visit.RecordId,
            Outcome = outcome,
            Closing = new Closing { Allowed = blockedBy.Count == 0, ClosesAs = visit.ClosesAs(duties, outcome), BlockedBy = [.. blockedBy] },
            AsOf = visit.AsOf,
            LookedAtOn = visit.LookedAtOn,
            RuleSet = catalogue.Info,
            EngineVersion = engineVersion,
            Context = visit.Context,
            InputHash = Hashes.OfInput(visit),
            Counts = counts,
            Findings = findings,
            Duties = duties,
            Situation = Situation(blockedBy),
            Deferrals = deferrals.Count > 0 ? deferrals : null,
            Missing = questions,
            NotLookedAt = Questions(Weight.Should),
            Due = Due(duties, deferrals),
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

    /// <summary>What is asked for. What one rule must have and another should is asked as a must.</summary>
    private IReadOnlyList<MissingItem> Questions(Weight weight)
    {
        List<(string, RuleInfo)>? asked = null;
        foreach (var (finding, verdict) in open)
        {
            foreach (var pointer in verdict.Weight == weight ? verdict.Missing : weight == Weight.Should ? verdict.OnlyShould : [])
            {
                if (weight == Weight.Must || !IsAMust(pointer))
                    (asked ??= []).Add((pointer, ((RuleFace)finding.Rule).Rule.Info));
            }
        }

        return asked is null ? [] : MissingList.Of(asked, visit);
    }

    private bool IsAMust(string pointer) => open.Exists(other => other.Verdict.Weight == Weight.Must && other.Verdict.Missing.Contains(pointer, StringComparer.Ordinal));

    private IReadOnlyList<DueItem> Due(IReadOnlyList<Duty> duties, IReadOnlyList<Deferral> deferrals)
    {
        List<DueItem>? due = null;
        foreach (var (finding, verdict) in open)
        {
            if (verdict.Due is var (what, by))
                (due ??= []).Add(new DueItem { What = what, By = by, RuleId = finding.RuleId, Reference = finding.References is [var first, ..] ? first : null });
        }

        foreach (var (what, by, ruleId) in BeforeUse(duties, deferrals))
            (due ??= []).Add(new DueItem { What = what, By = by, BeforeUse = true, RuleId = ruleId });

        return due is null ? [] : [.. due.OrderBy(item => item.By).ThenBy(item => item.RuleId, StringComparer.Ordinal)];
    }

    /// <summary>What waits until it is used again: dangers that were left, and duties of which something was put off, now or before.</summary>
    private IEnumerable<(string What, DateOnly By, string RuleId)> BeforeUse(IReadOnlyList<Duty> duties, IReadOnlyList<Deferral> deferrals)
    {
        foreach (var danger in OncePerDanger(visit.Dangers.Where(danger => danger.IsLeftOnTheAppliance)))
            yield return ("before it is used again: the danger is put right and looked at again", visit.AsOf, danger.RuleId);

        var putOffBy = visit.Owed.Calls.Where(called => called.Call.Weight is null).Select(called => called.Rule.Info.Id).FirstOrDefault() ?? catalogue.BringsBack;
        if (putOffBy is null)
            yield break;

        foreach (var kind in catalogue.DutyKinds)
        {
            var waiting = deferrals.Where(deferral => deferral.Waits && DutyList.KindOf(deferral.Part) == kind.Kind).ToList();
            if (waiting.Count > 0 || duties.Any(duty => duty.Kind == kind.Kind && duty.State == DutyState.Deferred))
                yield return ($"before it is used again: {kind.Title}", waiting.Count > 0 ? waiting.Min(deferral => deferral.On) : visit.AsOf, putOffBy);
        }
    }

    /// <summary>Of each danger one: what several rules found at one place, or what one defect answers, is put right once.</summary>
    private static IEnumerable<Danger> OncePerDanger(IEnumerable<Danger> dangers)
    {
        HashSet<string> known = new(StringComparer.Ordinal);
        foreach (var danger in dangers.OrderBy(danger => danger.RuleId, StringComparer.Ordinal).ThenBy(danger => danger.Subject, PointerOrder.Instance).ThenBy(danger => danger.Defect, StringComparer.Ordinal))
        {
            var isNew = known.Add(danger.Subject);
            if ((danger.Defect is null || known.Add(danger.Defect) || danger.Defect == danger.Subject) && isNew)
                yield return danger;
        }
    }

    /// <summary>What became of the dangers; handled where no rule on a duty towards a danger stands in the way, and none stands.</summary>
    private Situation? Situation(SortedSet<string> blockedBy)
    {
        if (visit.Dangers.Count == 0)
            return null;

        var kinds = catalogue.DutyKinds.Where(kind => kind.OfDanger).Select(kind => kind.Kind).ToHashSet(StringComparer.Ordinal);
        var unmet = new SortedSet<string>(visit.OpenParts.Select(DutyList.KindOf), StringComparer.Ordinal);
        foreach (var rule in rules)
        {
            if (rule is not null && blockedBy.Contains(rule.RuleId))
                unmet.UnionWith(KindsOf(rule).Where(kinds.Contains));
            if (rule is not null && visit.Dangers.Any(danger => !danger.Handled && danger.State <= DangerState.NotExcluded && danger.RuleId == rule.RuleId))
                unmet.UnionWith(KindsOf(rule));
        }

        // Of two defects that answer one danger the one counts that deals with it.
        var dangers = visit.Dangers.GroupBy(danger => (danger.Subject, danger.RuleId)).Select(same => same.OrderByDescending(danger => danger.Handled).ThenBy(danger => danger.State).First())
            .OrderBy(danger => danger.State).ThenBy(danger => danger.Subject, PointerOrder.Instance).ThenBy(danger => danger.RuleId, StringComparer.Ordinal).ToList();
        return new Situation
        {
            Dangers = dangers,
            State = dangers[0].State,
            Appliance = visit.LeftAs,
            Handled = unmet.Count == 0,
            Open = [.. unmet],
        };

        static IEnumerable<string> KindsOf(RuleFace rule) => rule.Rule.Info.Serves.Select(serves => DutyList.KindOf(serves.Part));
    }

    /// <summary>What stands in the way: a rule that failed, evidence that must be there, an unsafe finding that was not dealt with.</summary>
    private SortedSet<string> Blocking()
    {
        var blocking = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (finding, rule) in answers.Zip(rules))
        {
            if (finding.Outcome is Outcome.Error || (finding.Outcome is Outcome.Unsafe && !IsDealtWith(finding, rule)) || (finding.Outcome is Outcome.Missing && finding.Weight != Weight.Should))
                blocking.Add(finding.RuleId);
        }

        foreach (var (finding, verdict) in open)
        {
            if (verdict.Missing.Count > 0 && verdict.Weight != Weight.Should)
                blocking.Add(finding.RuleId);
        }

        return blocking;
    }

    // What follows from findings, such as a danger left in use, ends with them and not by what was done about one.
    private bool IsDealtWith(Finding finding, RuleFace? rule) => rule?.Rule is not InferenceRule && visit.IsDealtWith(finding);
}
