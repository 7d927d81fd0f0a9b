using Api.Tests.Contract;
using ComplianceApi.Commands.Demo;
using Findings;
using Kernel.Catalogues;
using Records.Canonical;
using Records.Many;
using Records.Reading;
using Rules;
using Visits;
using Visits.Judging;

namespace Api.Tests;

/// <summary>The demo month shows what it says it shows.</summary>
public sealed class DemoMonthTests
{
    private static readonly ComplianceEngine Engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly));

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

    [Theory]
    [InlineData("month.ndjson")]
    [InlineData("month.csv")]
    public async Task The_sample_month_is_the_demo_s(string name)
    {
        var made = new FileInfo(Path.Combine(Directory.CreateTempSubdirectory("month-").FullName, name));

        Assert.Equal(0, await DemoFile.SaveAsync(made, TextWriter.Null, TextWriter.Null, CancellationToken.None));

        Assert.True(
            File.ReadAllBytes(made.FullName).AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(Repository.Root, "openapi", "samples", name))),
            $"openapi/samples/{name} is stale: tests/rewrite makes it anew.");
        made.Directory!.Delete(recursive: true);
    }

    [Fact]
    public async Task As_CSV_the_month_holds_the_same_records()
    {
        await using var file = File.OpenRead(Path.Combine(Repository.Root, "openapi", "samples", "month.csv"));
        var expected = DemoMonth.Records(Engine.Catalogue.ExampleRecord).Select(one => CanonicalForm.Write(RecordReader.Read(one.Json).Record!)).GetEnumerator();
        await foreach (var line in ManyRecords.ReadAsync(file, RecordFormat.Csv, CancellationToken.None))
        {
            Assert.True(expected.MoveNext());
            Assert.Equal(expected.Current, CanonicalForm.Write(line.Read().Record!));
        }

        Assert.False(expected.MoveNext());
    }
}
