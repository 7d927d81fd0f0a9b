using System.Collections.Concurrent;
using System.Text.Json;
using Findings;
using Kernel;
using Kernel.Catalogues;
using Records;
using Records.Reading;
using Visits;
using Visits.Judging;

namespace Rules.Tests;

/// <summary>The rule set under test, compiled once for all tests.</summary>
internal static class RuleSet
{
    public static ComplianceEngine Engine { get; } = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly));

    private static readonly ConcurrentDictionary<IComplianceRule, Lazy<ComplianceEngine>> Engines = new();

    public static RuleCatalogue Catalogue => Engine.Catalogue;

    /// <summary>
    /// The engine that judges one rule: the rule alone, which says what it says in company (the engine's tests see to that), so that a
    /// fault in one rule shows in that rule's cases and nowhere else. An inference rule needs the others' findings.
    /// </summary>
    public static ComplianceEngine EngineOf(IComplianceRule rule) =>
        rule is InferenceRule ? Engine : Engines.GetOrAdd(rule, one => new(() => ComplianceEngine.Start(Catalogue.With([one])))).Value;

    public static ComplianceEngine EngineOf(string ruleId) => EngineOf(RuleOf(ruleId));

    public static IComplianceRule RuleOf(string ruleId) => Catalogue.Rules.Single(rule => rule.Info.Id == ruleId);

    public static IEnumerable<(IComplianceRule Rule, RuleCase Case)> Cases =>
        Catalogue.Cases.SelectMany(entry => entry.Value.Select(one => (entry.Key, one)));

    /// <summary>The record of a case; a case whose record has faults is itself at fault.</summary>
    public static ServiceRecord RecordOf(RuleCase one) => Read(one.RecordFrom(Catalogue.ExampleRecord));

    /// <summary>The example record with members set, written as a case writes them.</summary>
    public static ServiceRecord Example(string set) => RecordOf(new RuleCase
    {
        Name = "",
        Set = JsonSerializer.Deserialize<Dictionary<string, JsonElement>>(set),
        Expect = new Expectation { Outcome = Outcome.Pass },
    });

    public static ServiceRecord Read(byte[] json)
    {
        var read = RecordReader.Read(json);
        Assert.True(read.Record is not null, string.Join("; ", read.Faults.Select(fault => $"{fault.Pointer} {fault.Detail}")));
        return read.Record!;
    }

    public static IReadOnlyList<Finding> AnswersOf(string ruleId, Evaluation evaluation) => AnswersOf(ruleId, evaluation.Findings);

    public static IReadOnlyList<Finding> AnswersOf(string ruleId, IEnumerable<Finding> findings) =>
        [.. findings.Where(finding => finding.RuleId == ruleId)];

    /// <summary>The answer that a case speaks of.</summary>
    public static Finding AnswerTo(Expectation expected, IReadOnlyList<Finding> answers) => expected.Subject is { } subject
        ? Assert.Single(answers, candidate => candidate.Subject == subject)
        : answers.MinBy(candidate => candidate.Outcome)!;
}
