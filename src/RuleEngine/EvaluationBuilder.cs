using Findings;
using RuleModel;

namespace RuleEngine;

/// <summary>Puts the answers about one visit together: sorted findings, questions, duties not yet due, closing, hashes.</summary>
internal sealed class EvaluationBuilder(
    RuleCatalogue catalogue, Visit visit, IReadOnlyList<(ComplianceRule Rule, Answer Answer)> answers, IReadOnlyList<Finding> findings)
{
    public Evaluation Build(string engineVersion)
    {
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
            Findings = InOrder(),
            Missing = questions,
            Due = Due(),
            Figures = visit.Figures,
            Cautions = UsualCautions.All,
        };
        return evaluation with { ResultHash = Hashes.OfResult(evaluation) };
    }

    /// <summary>Gravest first, then by topic and rule, then as the rule gave them, which is their order in the record.</summary>
    private IReadOnlyList<Finding> InOrder() =>
    [
        .. Enumerable.Range(0, findings.Count)
            .OrderBy(index => findings[index].Outcome)
            .ThenBy(index => catalogue.RankOf(answers[index].Rule))
            .Select(index => findings[index]),
    ];

    private IReadOnlyList<MissingItem> Questions() => MissingList.Of(
        answers.SelectMany(pair => pair.Answer.Verdict.Missing.Select(pointer => (pointer, pair.Rule.Info.Id))));

    private List<DueItem> Due() =>
    [
        .. answers.Where(pair => pair.Answer.Verdict.Due is not null)
            .Select(pair => new DueItem
            {
                What = pair.Answer.Verdict.Due!.Value.What,
                By = pair.Answer.Verdict.Due!.Value.By,
                RuleId = pair.Rule.Info.Id,
                Reference = catalogue.References.Of(pair.Rule.Info) is [var first, ..] ? first : null,
            })
            .OrderBy(item => item.By).ThenBy(item => item.RuleId, StringComparer.Ordinal),
    ];

    /// <summary>
    /// What stands in the way: a rule that failed, evidence that is missing, an unsafe finding that no recorded defect answers. A job can
    /// be closed on a dangerous boiler once the record shows that it was made safe; what only a boiler in use can show is then not waited for.
    /// </summary>
    private Closing Closing()
    {
        var defects = (visit.Defects ?? []).Select(defect => new RecordedDefect(defect.Pointer, defect.Value)).ToList();
        var isMadeSafe = visit.IsLeftOutOfUse && defects.Exists(defect => defect.IsDangerous && defect.IsDealtWith);
        bool IsWaitedFor(Finding finding) => !(isMadeSafe && Topics.NeedAnApplianceInUse.Contains(finding.Topic));

        var blocking = findings.Zip(answers, (finding, pair) => (finding, isAsking: pair.Answer.Verdict.Missing.Count > 0))
            .Where(pair => pair.finding.Outcome is Outcome.Error
                || (pair.finding.Outcome is Outcome.Unsafe && !defects.Exists(defect => defect.Settles(pair.finding)))
                || ((pair.finding.Outcome is Outcome.Missing || pair.isAsking) && IsWaitedFor(pair.finding)))
            .Select(pair => pair.finding.RuleId)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .ToList();
        return new Closing { Allowed = blocking.Count == 0, BlockedBy = blocking };
    }
}
