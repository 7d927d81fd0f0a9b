using Findings;
using Jobs.Queue;
using Jobs.Summary;
using Records;
using Records.Many;
using Records.Reading;
using Storage;

namespace Jobs.Tests;

public sealed class AuditTests
{
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Each_record_is_judged_as_it_is_alone_and_the_counts_are_exact(string kind)
    {
        using var bench = new AuditBench(kind);
        var month = AuditBench.Month(450).ToList();
        var audit = await bench.Post(month);
        Assert.Equal(AuditState.Queued, (await bench.Status(audit)).State);

        await bench.WorkOff(bench.Worker, bench.AnotherWorker);

        var lines = await bench.Audits.LinesAsync(Scratch.A, audit, default);
        Assert.Equal(month.Select(line => line.Number), lines.Select(line => line.Line));
        foreach (var (line, record) in lines.Zip(month.Select(line => RecordReader.Read(line.Utf8))))
        {
            Assert.Equal(record.IsRecord ? Scratch.Rules.Evaluate(record.Record, lookedAtOn: new DateOnly(2026, 9, 30)).ResultHash : null, line.Evaluation?.ResultHash);
            Assert.Equal(record.Faults, line.Problem?.Errors ?? []);
        }

        var status = await bench.Status(audit);
        Assert.Equal(AuditState.Completed, status.State);
        Assert.Equal((450, 360, 90), (status.Records.Read, status.Records.Judged, status.Records.Rejected));
        var outcomes = status.Summary!.Outcomes;
        var each = lines.Select(line => line.Evaluation?.Outcome).ToLookup(outcome => outcome);
        Assert.Equal(
            (each[OverallOutcome.Unsafe].Count(), each[OverallOutcome.Incomplete].Count(), each[OverallOutcome.Advisory].Count(), each[OverallOutcome.Pass].Count()),
            (outcomes.Unsafe, outcomes.Incomplete, outcomes.Advisory, outcomes.Pass));
        Assert.Equal((90, 180), (outcomes.Unsafe, outcomes.Pass));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_chunk_that_its_holder_left_is_done_by_the_next_and_the_holder_cannot_write_it_again(string kind)
    {
        using var bench = new AuditBench(kind);
        var undisturbed = await bench.Post(AuditBench.Month(150));
        await bench.WorkOff();
        var audit = await bench.Post(AuditBench.Month(150));

        var left = (await bench.Chunks.TakeAsync(default))!;
        await bench.WorkOff();
        Assert.Equal(AuditState.Running, (await bench.Status(audit)).State);
        bench.Clock.Now += AuditBench.Lease + TimeSpan.FromSeconds(1);
        await bench.WorkOff(bench.Worker, bench.AnotherWorker);

        Assert.Equal(await bench.HashOf(undisturbed), await bench.HashOf(audit));
        Assert.False(await bench.Results.CompleteAsync(left, [], new SummaryParts(), default));
        Assert.Equal(await bench.HashOf(undisturbed), await bench.HashOf(audit));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_record_that_ends_every_worker_is_reported_and_the_others_are_judged(string kind)
    {
        using var bench = new AuditBench(kind);
        var audit = await bench.Post(AuditBench.Month(3));
        async Task EndWhileHolding(int records)
        {
            for (var attempt = 1; attempt <= Chunk.MostAttempts; attempt++)
            {
                Assert.Equal(records, (await bench.Chunks.TakeAsync(default))!.Lines.Count);
                bench.Clock.Now += AuditBench.Lease + TimeSpan.FromSeconds(1);
            }
        }

        await EndWhileHolding(records: 3);
        Assert.True(await bench.Worker.RunOneAsync(default));
        await EndWhileHolding(records: 1);
        await bench.WorkOff();

        var lines = await bench.Audits.LinesAsync(Scratch.A, audit, default);
        Assert.Equal("internal-error", lines[0].Problem!.Type);
        Assert.Contains("5 times", lines[0].Problem!.Errors[0].Detail, StringComparison.Ordinal);
        Assert.NotNull(lines[1].Evaluation);
        var status = await bench.Status(audit);
        Assert.Equal((AuditState.Completed, 3, 1, 2), (status.State, status.Records.Read, status.Records.Judged, status.Records.Rejected));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_key_stands_for_one_body(string kind)
    {
        using var bench = new AuditBench(kind);
        var audit = await bench.Post(AuditBench.Month(3), "key", "hash");
        Task<Intake> Again(string hash) => bench.Intake.ReceiveAsync(Scratch.A, "key", AuditBench.Month(3).ToAsyncEnumerable(), () => hash, default);

        Assert.Equal(new Intake(IntakeOutcome.Repeated, audit), await Again("hash"));
        Assert.Equal(IntakeOutcome.OtherBody, (await Again("other")).Outcome);
        Assert.Equal(IntakeOutcome.Accepted, (await bench.Intake.ReceiveAsync(Scratch.B, "key", AuditBench.Month(1).ToAsyncEnumerable(), () => "x", default)).Outcome);
        Assert.Equal(1, (await bench.Audits.ListAsync(Scratch.A, null, 10, default)).Total);
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Of_an_audit_that_does_not_arrive_in_full_nothing_stays(string kind)
    {
        using var bench = new AuditBench(kind);
        async IAsyncEnumerable<RecordLine> BreaksOff()
        {
            foreach (var line in AuditBench.Month(250))
            {
                await Task.Yield();
                yield return line;
                if (line.Number == 230)
                    throw new IOException("gone");
            }
        }

        await Assert.ThrowsAsync<IOException>(() => bench.Intake.ReceiveAsync(Scratch.A, "key", BreaksOff(), () => "x", default));
        Assert.Equal(IntakeOutcome.Empty, (await bench.Intake.ReceiveAsync(Scratch.A, "key", AsyncEnumerable.Empty<RecordLine>(), () => "x", default)).Outcome);
        Assert.False(await bench.Worker.RunOneAsync(default));
        Assert.Equal(0, (await bench.Audits.ListAsync(Scratch.A, null, 10, default)).Total);
        await bench.Post(AuditBench.Month(1), "key");
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Cancelled_it_is_not_gone_on_with(string kind)
    {
        using var bench = new AuditBench(kind);
        var audit = await bench.Post(AuditBench.Month(150));
        Assert.True(await bench.Worker.RunOneAsync(default));
        var held = (await bench.Chunks.TakeAsync(default))!;

        Assert.True(await bench.Audits.CancelAsync(Scratch.A, audit, default));

        Assert.False(await bench.Results.CompleteAsync(held, [], new SummaryParts(), default));
        Assert.False(await bench.Worker.RunOneAsync(default));
        var status = await bench.Status(audit);
        Assert.Equal((AuditState.Cancelled, 50), (status.State, status.Records.Judged + status.Records.Rejected));
        Assert.False(await bench.Audits.CancelAsync(Scratch.B, audit, default));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Pages_of_rows_put_together_are_all_rows_in_every_order(string kind)
    {
        using var bench = new AuditBench(kind);
        var audit = await bench.Post(AuditBench.Month(60));
        await bench.WorkOff();

        foreach (var sort in Enum.GetValues<FindingSort>())
        {
            var query = AuditBench.AnyRow with { Sort = sort };
            var rows = new List<FindingRow>();
            FindingCursor? after = null;
            while (await bench.Findings.PageAsync(Scratch.A, audit, query, after, 7, default) is { Count: > 0 } page)
            {
                rows.AddRange(page);
                Assert.True(FindingCursor.TryRead(FindingCursor.Of(page[^1], sort).ToText(), out after));
            }

            Assert.Equal(await bench.Findings.CountAsync(Scratch.A, audit, query, default), rows.Count);
            Assert.Equal(rows.Count, rows.Select(row => (row.Line, row.Ordinal)).Distinct().Count());
            string KeyOf(FindingRow row) => FindingCursor.Of(row, sort).Key;
            Assert.Equal(rows.OrderBy(KeyOf, StringComparer.Ordinal).ThenBy(row => row.Line).ThenBy(row => row.Ordinal), rows);
        }

        var unsafeRows = await bench.Findings.PageAsync(Scratch.A, audit, AuditBench.AnyRow with { Outcome = "unsafe" }, null, 100, default);
        Assert.Equal(12, unsafeRows.Select(row => row.Line).Distinct().Count());
        Assert.All(unsafeRows, row => Assert.Equal(("P-77", new DateOnly(2026, 9, 14)), (row.Premises, row.VisitedOn)));
        Assert.Equal(unsafeRows.Select(row => row.Line).Distinct(), (await bench.Audits.UnsafeAsync(Scratch.A, audit, default)).Select(danger => danger.Record.Line).Order());
        Assert.Empty(await bench.Findings.PageAsync(Scratch.B, audit, AuditBench.AnyRow, null, 100, default));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_profile_saved_after_the_start_does_not_count(string kind)
    {
        using var bench = new AuditBench(kind);
        using var scratch = new Scratch();
        var profiles = new ProfileStore(scratch.Open(kind));
        await profiles.SaveAsync(Scratch.A, "p", new MakerLimits { CoPpmMax = 100 }, bench.Clock.Now, default);
        await profiles.SaveAsync(Scratch.A, "p", new MakerLimits { CoPpmMax = 200 }, bench.Clock.Now.AddSeconds(1), default);

        Assert.Equal(1, (await profiles.FindAsync(Scratch.A, "p", null, default, asAt: bench.Clock.Now))!.Version);
        Assert.Null(await profiles.FindAsync(Scratch.A, "p", null, default, asAt: bench.Clock.Now.AddSeconds(-1)));
    }
}
