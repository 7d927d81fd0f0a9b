using System.Text;
using System.Text.Json.Nodes;
using Findings;
using Jobs.Looks;
using Records;
using Records.Many;
using Records.Reading;
using Storage;
using Visits.Facts;

namespace Jobs.Tests;

/// <summary>Records of audits are visits: to histories, timelines, due dates, previews and looks as much as those that are posted one by one.</summary>
public sealed class AuditVisitTests
{
    private static readonly DateTimeOffset Later = new(2026, 12, 1, 8, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_record_of_an_audit_is_known_to_history_timeline_due_dates_and_looks(string kind)
    {
        using var bench = new AuditBench(kind);
        var auditId = await bench.Post(AuditBench.Month(3));
        await bench.WorkOff();
        bench.Clock.Now = Later;
        var id = $"{auditId}.000000001";

        var earlier = Assert.Single((await new HistoryStore(bench.Store, Scratch.Rules.Law).FindAsync(Scratch.A, [Of("S-1", "next", "2027-09-01")], Later, default))[0].Earlier);
        Assert.Equal((id, "naturalGas"), (earlier.EvaluationId, earlier.Fuel));
        Assert.Contains(earlier.Values, value => value is { Name: MeasuredNames.CoPpm, Value: 400 });

        var (visits, total) = await Timelines(bench).VisitsAsync(Scratch.A, "S-1", null, Later, 10, default);
        Assert.Equal((id, 1, OverallOutcome.Incomplete), (visits[0].EvaluationId, total, visits[0].Outcome));
        var (evaluations, _) = await Timelines(bench).EvaluationsAsync(Scratch.A, "S-1", "quillback", Later, null, 10, default);
        Assert.Equal((id, "Quillback", OverallOutcome.Incomplete), Assert.Single(evaluations) is var one ? (one.EvaluationId, one.Maker, one.Outcome) : default);

        var due = await new DueStore(bench.Store).PageAsync(Scratch.A, new(2026, 1, 1), new(2040, 1, 1), null, 500, default);
        Assert.Equal([id, $"{auditId}.000000002"], due.Where(date => date.Kind == DueKind.AnnualService).Select(date => date.EvaluationId).Order(StringComparer.Ordinal));
        Assert.Equal(due.Count, due.DistinctBy(date => (date.Kind, date.Key)).Count());

        Assert.Equal(2, (await new LookStore(bench.Store).FindAsync(Scratch.A, new(2026, 9, 1), new(2026, 9, 30), 0.1m, default))!.Records);
        var stored = (await new EvaluationStore(bench.Store, Scratch.Rules.Law).FindAsync(Scratch.A, id, default))!;
        Assert.Equal((id, "M-1"), (stored.Evaluation.EvaluationId, stored.Evaluation.RecordId));
        Assert.Equal(AuditBench.Month(1).Single().Utf8.ToArray(), await new EvaluationStore(bench.Store, Scratch.Rules.Law).FindRecordAsync(Scratch.A, id, default));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Another_tenant_knows_nothing_of_it(string kind)
    {
        using var bench = new AuditBench(kind);
        var id = $"{await bench.Post(AuditBench.Month(1))}.000000001";
        await bench.WorkOff();

        Assert.NotNull(await new EvaluationStore(bench.Store, Scratch.Rules.Law).FindAsync(Scratch.A, id, default));
        Assert.Null(await new EvaluationStore(bench.Store, Scratch.Rules.Law).FindAsync(Scratch.B, id, default));
        Assert.Null(await new EvaluationStore(bench.Store, Scratch.Rules.Law).FindRecordAsync(Scratch.B, id, default));
        Assert.Empty((await new HistoryStore(bench.Store, Scratch.Rules.Law).FindAsync(Scratch.B, [Of("S-1", "next", "2027-09-01")], Later, default))[0].Earlier);
        Assert.Equal(0, await new DueStore(bench.Store).CountAsync(Scratch.B, new(2026, 1, 1), new(2040, 1, 1), default));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Records_of_one_audit_do_not_see_one_another_and_the_next_audit_sees_them(string kind)
    {
        using var bench = new AuditBench(kind);
        var visits = new[] { Line(1, "V-1", "2025-09-10"), Line(2, "V-2", "2026-09-10") };
        var first = await bench.Post(visits);
        await bench.WorkOff();
        bench.Clock.Now = Later;
        var second = await bench.Post([Line(1, "V-3", "2026-11-10")]);
        await bench.WorkOff();

        Assert.All(await bench.Audits.LinesAsync(Scratch.A, first, default), line => Assert.Null(line.Evaluation!.Context.History));
        var seen = Assert.Single(await bench.Audits.LinesAsync(Scratch.A, second, default)).Evaluation!.Context;
        Assert.Equal([$"{first}.000000002", $"{first}.000000001"], seen.History!.Select(visit => visit.EvaluationId));
        Assert.Equal($"{first}.000000002", seen.PreviousEvaluationId);
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Of_one_visit_what_was_said_last_counts_however_it_came(string kind)
    {
        using var bench = new AuditBench(kind);
        var posted = await Save(bench, "V-1", "2026-09-10");
        Assert.Equal([posted], await Visits(bench));

        bench.Clock.Now = bench.Clock.Now.AddHours(1);
        var audited = $"{await bench.Post([Line(1, "V-1", "2026-09-10")])}.000000001";
        await bench.WorkOff();
        Assert.Equal([audited], await Visits(bench));
        Assert.All(await Due(bench), date => Assert.Equal(audited, date.EvaluationId));

        bench.Clock.Now = bench.Clock.Now.AddHours(1);
        var again = await Save(bench, "V-1", "2026-09-10");
        Assert.Equal([again], await Visits(bench));
        var (_, all) = await Timelines(bench).EvaluationsAsync(Scratch.A, "A-9", null, Later, null, 10, default);
        Assert.Equal(3, all);
    }

    /// <summary>Many write the same visit at once, as several instances may.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Of_one_visit_said_many_times_at_once_one_counts(string kind)
    {
        using var bench = new AuditBench(kind);
        for (var round = 0; round < 5; round++)
        {
            await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => Save(bench, "V-1", "2026-09-10"))));
            Assert.Single(await Visits(bench));
        }
    }

    /// <summary>The chunk of the first lines is done last.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Of_one_visit_in_two_lines_the_later_line_counts_whichever_was_judged_first(string kind)
    {
        using var bench = new AuditBench(kind);
        const int Lines = 250;
        var lines = AuditBench.Month(Lines).Select(line => line.Number is 1 or Lines ? Line(line.Number, "V-1", "2026-09-10") : line);
        var auditId = await bench.Post(lines);
        var held = (await bench.Chunks.TakeAsync(default))!;
        Assert.Equal(1, held.Lines[0].Number);
        await bench.WorkOff();
        Assert.Equal([$"{auditId}.{Lines:D9}"], await Visits(bench));

        bench.Clock.Now += AuditBench.Lease + TimeSpan.FromSeconds(1);
        await bench.WorkOff();
        Assert.Equal(AuditState.Completed, (await bench.Status(auditId)).State);
        Assert.Equal([$"{auditId}.{Lines:D9}"], await Visits(bench));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_corrected_record_takes_the_place_of_the_audits(string kind)
    {
        using var bench = new AuditBench(kind);
        var audited = $"{await bench.Post([Line(1, "V-1", "2026-09-10")])}.000000001";
        await bench.WorkOff();
        bench.Clock.Now = bench.Clock.Now.AddHours(1);
        var corrected = await Save(bench, "V-2", "2026-09-11", supersedes: audited);

        Assert.Equal([corrected], await Visits(bench));
        Assert.Equal(corrected, (await new EvaluationStore(bench.Store, Scratch.Rules.Law).FindAsync(Scratch.A, audited, default))!.SupersededBy);
        var (evaluations, _) = await Timelines(bench).EvaluationsAsync(Scratch.A, "A-9", null, Later, null, 10, default);
        Assert.Equal([null, corrected], evaluations.Select(one => one.SupersededBy));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task With_its_record_a_visit_is_purged(string kind)
    {
        using var bench = new AuditBench(kind);
        await bench.Post([Line(1, "V-1", "2023-09-10", use: "ownerOccupied")]);
        await bench.WorkOff();
        bench.Clock.Now = Later;
        Assert.NotEmpty(await Visits(bench));
        Assert.NotEmpty(await Due(bench));

        var counts = await new Retention(bench.Store, Scratch.Rules.Law, TimeProvider.System).PurgeAsync(Scratch.A, new(2024, 1, 1, 0, 0, 0, TimeSpan.Zero), _ => { }, default);
        Assert.Equal(1, counts.AuditLines);
        Assert.Empty(await Visits(bench));
        Assert.Empty(await Due(bench));
    }

    private static TimelineStore Timelines(AuditBench bench) => new(bench.Store, new HistoryStore(bench.Store, Scratch.Rules.Law));

    private static async Task<IEnumerable<string>> Visits(AuditBench bench) =>
        (await Timelines(bench).VisitsAsync(Scratch.A, "A-9", null, Later, 10, default)).Visits.Select(visit => visit.EvaluationId);

    private static Task<IReadOnlyList<DueDate>> Due(AuditBench bench) => new DueStore(bench.Store).PageAsync(Scratch.A, new(2015, 1, 1), new(2040, 1, 1), null, 500, default);

    private static async Task<string> Save(AuditBench bench, string recordId, string day, string? supersedes = null)
    {
        var bytes = Bytes(recordId, day, supersedes: supersedes);
        var record = RecordReader.Read(bytes).Record!;
        var evaluation = Scratch.Rules.Evaluate(record) with { EvaluationId = Guid.CreateVersion7(bench.Clock.Now).ToString(), EvaluatedAt = bench.Clock.Now };
        Assert.True(await new EvaluationStore(bench.Store, Scratch.Rules.Law).SaveAsync(Scratch.A, record, bytes, evaluation, Include.Passes, default));
        return evaluation.EvaluationId;
    }

    private static ServiceRecord Of(string serial, string recordId, string day) => RecordReader.Read(Bytes(recordId, day, serial)).Record!;

    private static RecordLine Line(long number, string recordId, string day, string? use = null) => new(number, Bytes(recordId, day, use: use));

    private static byte[] Bytes(string recordId, string day, string serial = "A-9", string? use = null, string? supersedes = null)
    {
        var record = JsonNode.Parse(Scratch.Posted)!;
        record["recordId"] = recordId;
        record["appliance"]!["serialNumber"] = serial;
        record["startedAt"] = $"{day}T09:00:00Z";
        record["finishedAt"] = $"{day}T10:25:00Z";
        if (use is not null)
            record["premises"]!["use"] = use;
        if (supersedes is not null)
            record["supersedes"] = supersedes;
        record.AsObject().Remove("previousVisit");
        return Encoding.UTF8.GetBytes(record.ToJsonString());
    }
}
