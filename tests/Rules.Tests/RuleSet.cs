using System.Text.Json;
using Findings;
using RuleEngine;
using RuleModel;
using ServiceRecords;

namespace Rules.Tests;

/// <summary>The rule set under test, compiled once for all tests.</summary>
internal static class RuleSet
{
    public static ComplianceEngine Engine { get; } = ComplianceEngine.Start(RuleCatalogue.Of(typeof(RuleIds).Assembly));

    public static RuleCatalogue Catalogue => Engine.Catalogue;

    public static IEnumerable<(ComplianceRule Rule, RuleCase Case)> Cases =>
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

    public static IReadOnlyList<Finding> AnswersOf(string ruleId, Evaluation evaluation) =>
        [.. evaluation.Findings.Where(finding => finding.RuleId == ruleId)];
}
