using System.Collections.Concurrent;
using Findings;
using RuleEngine;
using RuleModel;

namespace SecondOpinion.Tests;

/// <summary>One rule that says something else than the second opinion about one subject of one record.</summary>
internal sealed record Disagreement(string RuleId, string Subject, Opinion? Rule, Opinion? SecondOpinion, GeneratedRecord Record);

/// <summary>Holds the service's answers against the second opinion, rule by rule and subject by subject.</summary>
internal sealed class Comparison
{
    private const int ShownOfEachRule = 3;
    private static readonly ComplianceEngine Engine = ComplianceEngine.Start(RuleCatalogue.Of(typeof(Rules.RuleIds).Assembly));
    private static readonly HashSet<string> Inferring =
        [.. Engine.Catalogue.Rules.Where(rule => rule is InferenceRule).Select(rule => rule.Info.Id)];

    private readonly ConcurrentBag<Disagreement> _disagreements = [];
    private long _records;
    private long _answers;

    public static IReadOnlyList<string> RuleIds { get; } = [.. Engine.Catalogue.Rules.Select(rule => rule.Info.Id)];

    public long Records => _records;

    public long Answers => _answers;

    public IReadOnlyCollection<Disagreement> Disagreements => _disagreements;

    /// <summary>Judges one record twice and keeps what differs.</summary>
    public void Judge(GeneratedRecord generated)
    {
        var evaluation = Engine.Evaluate(generated.Record);
        var said = evaluation.Findings.ToLookup(finding => finding.RuleId, AsOpinion, StringComparer.Ordinal);
        var one = new Case(generated.Record, [.. evaluation.Findings.Where(finding => !Inferring.Contains(finding.RuleId))]);

        foreach (var (ruleId, say) in OpinionTable.All)
        {
            var own = say(one).ToList();
            foreach (var subject in said[ruleId].Concat(own).Select(opinion => opinion.Subject).Distinct(StringComparer.Ordinal))
                Compare(ruleId, subject, [.. said[ruleId].Where(o => o.Subject == subject)], [.. own.Where(o => o.Subject == subject)], generated);
        }

        Interlocked.Increment(ref _records);
    }

    /// <summary>The disagreements by rule, each with what was changed in its record.</summary>
    public string Report() => string.Join('\n', _disagreements
        .GroupBy(one => one.RuleId, StringComparer.Ordinal)
        .OrderBy(rule => rule.Key, StringComparer.Ordinal)
        .SelectMany(rule => rule
            .OrderBy(one => one.Record.Changes.Count)
            .ThenBy(one => one.Record.Number)
            .Take(ShownOfEachRule)
            .SelectMany(Lines)
            .Prepend($"{rule.Key}: {rule.Count()}")));

    private static IEnumerable<string> Lines(Disagreement one) =>
    [
        $"  record {one.Record.Number}: the rule says {Shown(one.Rule)}; the second opinion {Shown(one.SecondOpinion)}",
        .. one.Record.Changes.Select(change => $"    {change}"),
    ];

    private void Compare(string ruleId, string subject, Opinion[] rule, Opinion[] second, GeneratedRecord generated)
    {
        Interlocked.Increment(ref _answers);
        if (rule.Length != 1 || second.Length != 1 || rule[0] != second[0])
            _disagreements.Add(new Disagreement(ruleId, subject, rule.FirstOrDefault(), second.FirstOrDefault(), generated));
    }

    private static Opinion AsOpinion(Finding finding) => new(finding.Subject, finding.Outcome, finding.ExpectedClass);

    private static string Shown(Opinion? opinion) => opinion?.ToString() ?? "nothing";
}
