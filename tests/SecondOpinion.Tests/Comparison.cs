using System.Collections.Concurrent;
using Findings;
using Kernel;
using Kernel.Catalogues;
using Kernel.Engine;
using SecondOpinion.Opinions;
using SecondOpinion.Tests.Records;
using Visits;
using Visits.Judging;

namespace SecondOpinion.Tests;

/// <summary>One rule that says something else than the second opinion about one subject of one record.</summary>
internal sealed record Disagreement(string RuleId, string Subject, IReadOnlyList<Opinion> Rule, IReadOnlyList<Opinion> SecondOpinion, GeneratedRecord Record);

/// <summary>Holds the service's answers against the second opinion, rule by rule and subject by subject.</summary>
internal sealed class Comparison
{
    private const int ShownOfEachRule = 3;
    private static readonly RuleCatalogue Rules = RuleCatalogue.Of(RecordModel.Instance, typeof(global::Rules.RuleIds).Assembly);

    // The rules as they judge, without the duties: what a silence weighs on a visit is compared over whole records.
    private static readonly ComplianceEngine Engine = ComplianceEngine.Start(Rules.With(Rules.Rules));
    private static readonly HashSet<string> Inferring =
        [.. Engine.Catalogue.Rules.Where(rule => rule is InferenceRule).Select(rule => rule.Info.Id)];

    private readonly ConcurrentBag<Disagreement> _disagreements = [];
    private long _records;
    private long _answers;

    public static IReadOnlyList<string> RuleIds { get; } = [.. Engine.Catalogue.Rules.Select(rule => rule.Info.Id)];

    /// <summary>The record of every case that stands beside a rule, with the name of the case.</summary>
    public static IEnumerable<(string Name, byte[] Json)> RecordsOfCases =>
        Engine.Catalogue.Cases.SelectMany(rule => rule.Value.Select(one => ($"{rule.Key}: {one.Name}", one.RecordFrom(Engine.Catalogue.ExampleRecord))));

    public long Records => _records;

    public long Answers => _answers;

    public IReadOnlyCollection<Disagreement> Disagreements => _disagreements;

    /// <summary>How often each of the standing differences occurred.</summary>
    public ConcurrentDictionary<string, int> Standing { get; } = new(StringComparer.Ordinal);

    /// <summary>Rules that let a value pass outside of the limit that they name, each with one such record.</summary>
    public ConcurrentDictionary<string, int> PassedOutside { get; } = new(StringComparer.Ordinal);

    /// <summary>Judges one record twice, keeps what differs, and gives what the rules say of the whole record.</summary>
    public OverallOutcome Judge(GeneratedRecord generated)
    {
        var compared = 0;
        var answers = AnswersTo(Engine, generated);
        foreach (var disagreement in Compare(generated, answers.Findings, OpinionTable.All.Keys, ref compared))
        {
            if (StandingDifference.All.FirstOrDefault(one => one.Rules.Contains(disagreement.RuleId) && one.IsMeant(disagreement)) is { } standing)
                Standing.AddOrUpdate(standing.Name, 1, (_, count) => count + 1);
            else
                _disagreements.Add(disagreement);
        }

        foreach (var finding in answers.Findings.Where(finding => finding is { Outcome: Outcome.Pass, Margin: < 0 }))
            PassedOutside.TryAdd(finding.RuleId, generated.Number);
        Interlocked.Add(ref _answers, compared);
        Interlocked.Increment(ref _records);
        return answers.Outcome;
    }

    /// <summary>The disagreements by rule, each with what was changed in its record.</summary>
    public string Report() => string.Join('\n', _disagreements
        .GroupBy(one => one.RuleId, StringComparer.Ordinal)
        .OrderBy(rule => rule.Key, StringComparer.Ordinal)
        .SelectMany(rule => rule
            .OrderBy(one => one.Record.Changes.Count)
            .ThenBy(one => one.Record.Number)
            .Take(ShownOfEachRule)
            .Select(Shortened)
            .SelectMany(Lines)
            .Prepend($"{rule.Key}: {rule.Count()}")));

    /// <summary>What the rules of an engine and the second opinion say differently of one record.</summary>
    internal static IReadOnlyList<Disagreement> Of(ComplianceEngine engine, GeneratedRecord generated)
    {
        var compared = 0;
        return Compare(generated, AnswersTo(engine, generated).Findings, engine.Catalogue.Rules.Select(rule => rule.Info.Id), ref compared);
    }

    private static Answers AnswersTo(ComplianceEngine engine, GeneratedRecord generated) => engine.Answer(generated.Record, new Lookup { History = generated.History, SaidBefore = generated.SaidBefore });

    private static List<Disagreement> Compare(GeneratedRecord generated, IReadOnlyList<Finding> answers, IEnumerable<string> ruleIds, ref int compared)
    {
        var said = answers.ToLookup(finding => finding.RuleId, finding => new Opinion(finding.Subject, finding.Outcome, finding.ExpectedClass), StringComparer.Ordinal);
        var one = new Case(generated.Record, generated.History, [.. answers.Where(finding => !Inferring.Contains(finding.RuleId))], generated.SaidBefore);

        var disagreements = new List<Disagreement>();
        foreach (var ruleId in ruleIds)
        {
            var opinions = OpinionTable.All[ruleId](one).ToList();
            foreach (var subject in said[ruleId].Concat(opinions).Select(opinion => opinion.Subject).Distinct(StringComparer.Ordinal))
            {
                compared++;
                var rule = said[ruleId].Where(opinion => opinion.Subject == subject).ToList();
                var second = opinions.Where(opinion => opinion.Subject == subject).ToList();
                if (rule is not [var its] || second is not [var own] || its != own)
                    disagreements.Add(new Disagreement(ruleId, subject, rule, second, generated));
            }
        }

        return disagreements;
    }

    /// <summary>The same disagreement with as few changes as it needs.</summary>
    private static Disagreement Shortened(Disagreement one)
    {
        var compared = 0;
        for (var i = one.Record.Changes.Count - 1; i >= 0; i--)
        {
            var fewer = RecordGenerator.With(one.Record.Number, one.Record.Changes.Where((_, index) => index != i));
            if (fewer is not null && Compare(fewer, AnswersTo(Engine, fewer).Findings, [one.RuleId], ref compared) is [var same, ..])
            {
                one = same;
                i = Math.Min(i, one.Record.Changes.Count);
            }
        }

        return one;
    }

    private static IEnumerable<string> Lines(Disagreement one) =>
    [
        $"  record {one.Record.Number}: the rule says {Shown(one.Rule)}; the second opinion {Shown(one.SecondOpinion)}",
        .. one.Record.Changes.Select(change => $"    {change}"),
        .. one.RuleId == "danger-taken-back" ? one.Record.SaidBefore.Select(answer => FormattableString.Invariant($"    told in the record finished at {answer.FinishedAt:O}: {string.Join("; ", answer.Dangers)}")) : [],
    ];

    private static string Shown(IReadOnlyList<Opinion> opinions) => opinions.Count == 0 ? "nothing" : string.Join(" and ", opinions);
}
