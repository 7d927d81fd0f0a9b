using System.Text;
using System.Text.Json.Nodes;
using Findings;
using Records.Many;
using Records.Reading;
using Storage;

namespace Jobs.Tests;

public sealed class CorrectionTests
{
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_record_that_another_of_the_audit_corrects_is_judged_and_not_counted(string kind)
    {
        using var bench = new AuditBench(kind);
        var dangerous = Record(coPpm: 2000);
        var first = await Save(bench, 1, dangerous);
        var second = await Save(bench, 2, Record(coPpm: 400, first));
        var third = Record(coPpm: 96, second, because: "mistyped");

        // The last correction comes first and in another chunk; what lies between it and the first is in the audit too.
        var month = AuditBench.Month(250).ToList();
        month[0] = new RecordLine(1, third);
        month[248] = new RecordLine(249, Reordered(dangerous));
        month[249] = new RecordLine(250, Record(coPpm: 400, first));
        var audit = await bench.Post(month);
        await bench.WorkOff(bench.Worker, bench.AnotherWorker);

        var lines = await bench.Audits.LinesAsync(Scratch.A, audit, default);
        Assert.Equal([(249, 250), (250, 1)], lines.Where(line => line.SupersededBy is not null).Select(line => (line.Line, line.SupersededBy!.Value)));
        Assert.Equal(OverallOutcome.Unsafe, lines[248].Evaluation!.Outcome);
        var summary = (await bench.Status(audit)).Summary!;
        Assert.Equal((250L, 200L, 50L, 2L), (summary.Records.Read, summary.Records.Judged, summary.Records.Rejected, summary.Records.Superseded));
        Assert.Equal(198, summary.Outcomes.Unsafe + summary.Outcomes.Incomplete + summary.Outcomes.Advisory + summary.Outcomes.Pass);
        Assert.DoesNotContain(summary.WorstAppliances.Rows, row => row.Line is 249 or 250);
        var rows = await bench.Findings.PageAsync(Scratch.A, audit, AuditBench.AnyRow with { Outcome = "unsafe" }, null, 500, default);
        Assert.All(rows, row => Assert.Equal(row.Line == 249 ? 250 : null, row.SupersededBy));
        Assert.Contains(rows, row => row.Line == 249);
    }

    [Fact]
    public async Task What_only_resembles_a_corrected_record_is_counted_and_what_may_not_correct_it_replaces_nothing()
    {
        using var bench = new AuditBench("sqlite");
        var first = await Save(bench, 1, Record(coPpm: 2000));
        var audit = await bench.Post([new RecordLine(1, Record(coPpm: 2001)), new RecordLine(2, Record(coPpm: 96, first)), new RecordLine(3, Record(coPpm: 96, "unknown"))]);
        await bench.WorkOff();

        var records = (await bench.Status(audit)).Summary!.Records;
        Assert.Equal((1L, 2L, 0L), (records.Judged, records.Rejected, records.Superseded));

        // Without a reason the danger is counted, and so it is where the record is of another boiler.
        var another = JsonNode.Parse(Record(coPpm: 96, first, because: "mistyped"))!;
        another["appliance"]!["serialNumber"] = "another";
        audit = await bench.Post([new RecordLine(1, Record(coPpm: 2000)), new RecordLine(2, Record(coPpm: 96, first)), new RecordLine(3, Encoding.UTF8.GetBytes(another.ToJsonString()))]);
        await bench.WorkOff();
        Assert.Equal((1, 2L, 0L), ((await bench.Status(audit)).Summary!.Outcomes.Unsafe, (await bench.Status(audit)).Summary!.Records.Rejected, (await bench.Status(audit)).Summary!.Records.Superseded));

        // A correction that cannot be judged replaces nothing.
        var faulty = JsonNode.Parse(Record(coPpm: 96, first, because: "mistyped"))!;
        faulty["appliance"]!["fuel"] = "coal";
        audit = await bench.Post([new RecordLine(1, Record(coPpm: 2000)), new RecordLine(2, Encoding.UTF8.GetBytes(faulty.ToJsonString()))]);
        await bench.WorkOff();
        Assert.Equal((1, 0L), ((await bench.Status(audit)).Summary!.Outcomes.Unsafe, (await bench.Status(audit)).Summary!.Records.Superseded));
    }

    private static async Task<string> Save(AuditBench bench, int number, byte[] record)
    {
        var evaluation = Scratch.Evaluation(number);
        Assert.True(await new EvaluationStore(bench.Store, Scratch.Rules.Law).SaveAsync(Scratch.A, RecordReader.Read(record).Record!, record, evaluation, Include.All, default));
        return evaluation.EvaluationId!;
    }

    private static byte[] Record(decimal coPpm, string? supersedes = null, string? because = null)
    {
        var record = JsonNode.Parse(Scratch.Posted)!;
        record["combustion"]!["readings"]![0]!["coPpm"] = coPpm;
        if (supersedes is not null)
            record["supersedes"] = supersedes;
        if (because is not null)
            record["supersedesBecause"] = new JsonObject { ["reason"] = because };
        return Encoding.UTF8.GetBytes(record.ToJsonString());
    }

    /// <summary>The same record as another program would write it.</summary>
    private static byte[] Reordered(byte[] record) =>
        Encoding.UTF8.GetBytes(new JsonObject(JsonNode.Parse(record)!.AsObject().Reverse().Select(member => KeyValuePair.Create(member.Key, member.Value?.DeepClone()))).ToJsonString());
}
