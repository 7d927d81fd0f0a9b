using Findings;
using RuleModel;

namespace RuleEngine;

/// <summary>Puts the answers about one visit together: sorted findings, questions, duties not yet due, closing, hashes.</summary>
internal sealed class EvaluationBuilder(RuleCatalogue catalogue, Visit visit, IReadOnlyList<Settled> answers)
{
    public Evaluation Build(string engineVersion)
    {
        var findings = InOrder();
        var counts = OutcomeCounts.Of(findings);
        var questions = Questions();
        var evaluation = new Evaluation
        {
            RecordId = visit.Record.RecordId,
            Outcome = Outcomes.Combine(counts, questions.Count > 0),
            Closing = Closing(),
            AsOf = visit.AsOf,
            LookedAtOn = visit.LookedAtOn,
            RuleSet = catalogue.Info,
            EngineVersion = engineVersion,
            Context = visit.Lookup.ToContext(),
            InputHash = Hashes.OfInput(visit),
            Counts = counts,
            Findings = findings,
            Missing = questions,
            Due = Due(),
            Figures = visit.Figures,
            Cautions = UsualCautions.All,
        };
        return evaluation with { ResultHash = Hashes.OfResult(evaluation) };
    }

    /// <summary>Gravest first, then by topic and rule, then as the rule gave them, which is their order in the record.</summary>
    private Finding[] InOrder()
    {
        var findings = new Finding[answers.Count];
        var places = new long[answers.Count];
        for (var i = 0; i < findings.Length; i++)
        {
            findings[i] = answers[i].Finding;
            places[i] = ((long)findings[i].Outcome << 48) + ((long)answers[i].Face.Rank << 24) + i;
        }

        Array.Sort(places, findings);
        return findings;
    }

    private IReadOnlyList<MissingItem> Questions()
    {
        List<(string, string)>? asked = null;
        foreach (var (face, verdict, _) in answers)
        {
            foreach (var pointer in verdict.Missing)
                (asked ??= []).Add((pointer, face.Info.Id));
        }

        return asked is null ? [] : MissingList.Of(asked);
    }

    private IReadOnlyList<DueItem> Due()
    {
        List<DueItem>? due = null;
        foreach (var (face, verdict, _) in answers)
        {
            if (verdict.Due is var (what, by))
                (due ??= []).Add(new DueItem { What = what, By = by, RuleId = face.Info.Id, Reference = face.References is [var first, ..] ? first : null });
        }

        return due is null ? [] : [.. due.OrderBy(item => item.By).ThenBy(item => item.RuleId, StringComparer.Ordinal)];
    }

    /// <summary>
    /// What stands in the way: a rule that failed, evidence that is missing, an unsafe finding that no recorded defect answers. A job can
    /// be closed on a dangerous boiler once the record shows that it was made safe; what only a boiler in use can show is then not waited for.
    /// </summary>
    private Closing Closing()
    {
        var isMadeSafe = visit.IsLeftOutOfUse && visit.RecordedDefects.Any(defect => defect.IsDangerous && defect.IsDealtWith);
        var blocking = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (_, verdict, finding) in answers)
        {
            var isWaitedFor = !(isMadeSafe && Topics.NeedAnApplianceInUse.Contains(finding.Topic));
            if (finding.Outcome is Outcome.Error
                || (finding.Outcome is Outcome.Unsafe && !visit.RecordedDefects.Any(defect => defect.Settles(finding)))
                || ((finding.Outcome is Outcome.Missing || verdict.Missing.Count > 0) && isWaitedFor))
            {
                blocking.Add(finding.RuleId);
            }
        }

        return new Closing { Allowed = blocking.Count == 0, BlockedBy = [.. blocking] };
    }
}
