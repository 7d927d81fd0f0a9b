using ComplianceApi;
using Findings;
using RuleEngine;
using Rules;
using ServiceRecords;

namespace Api.Tests;

/// <summary>The demo month shows what it says it shows.</summary>
public sealed class DemoMonthTests
{
    private static readonly ComplianceEngine Engine = ComplianceEngine.Start(RuleCatalogue.Of(typeof(RuleIds).Assembly));

    [Fact]
    public void Every_record_comes_out_as_its_situation_says()
    {
        var records = DemoMonth.Records(Engine.Catalogue.ExampleRecord).ToList();
        Assert.Equal(200, records.Count);
        Assert.All(records, one =>
        {
            var read = RecordReader.Read(one.Json);
            Assert.True(read.IsRecord, $"{one.Situation.Name}: {string.Join("; ", read.Faults)}");
            Assert.Equal((one.Situation.Name, one.Situation.Outcome), (one.Situation.Name, Engine.Evaluate(read.Record).Outcome));
        });
        Assert.Equal(Enum.GetValues<OverallOutcome>().ToHashSet(), records.Select(one => one.Situation.Outcome).ToHashSet());
    }

    [Fact]
    public void The_month_is_the_same_every_time() => Assert.Equal(
        DemoMonth.Records(Engine.Catalogue.ExampleRecord).Select(one => Convert.ToHexString(one.Json)),
        DemoMonth.Records(Engine.Catalogue.ExampleRecord).Select(one => Convert.ToHexString(one.Json)));
}
