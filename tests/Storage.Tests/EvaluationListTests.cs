using Findings;
using Records;
using Records.Values;
using Storage.Tests.Shared;

namespace Storage.Tests;

public sealed class EvaluationListTests : IDisposable
{
    private static int _number;

    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Each_question_finds_its_own(string kind)
    {
        var database = _scratch.Open(kind);
        var list = new EvaluationList(database, new Journal(database));
        await Save(database, "plain", record => record);
        await Save(database, "another-engineer", record => With(record, engineer: "7009999"));
        await Save(database, "another-home", record => With(record, premises: "P-2"));
        await Save(database, "another-day", record => With(record, finishedAt: "2026-09-15T10:25:00+01:00"));
        await Save(database, "another-boiler", record => With(record, serialNumber: "QB-2", maker: "Fellbeck"));
        await Save(database, "held", record => record, closes: false);
        await Save(database, "unsafe", record => record, outcome: OverallOutcome.Unsafe);

        Assert.Equal(["unsafe", "held", "another-boiler", "another-day", "another-home", "another-engineer", "plain"], await Names(new()));
        Assert.Equal(["another-engineer"], await Names(new() { Engineer = "7009999" }));
        Assert.Equal(["another-home"], await Names(new() { Premises = "p-2 " }));
        Assert.Equal(["another-day"], await Names(new() { From = new(2026, 9, 15) }));
        Assert.DoesNotContain("another-day", await Names(new() { From = new(2026, 9, 14), To = new(2026, 9, 14) }));
        Assert.Equal(7, (await Names(new() { To = DateOnly.MaxValue })).Count);
        Assert.Equal(["another-boiler"], await Names(new() { SerialNumber = "QB-2" }));
        Assert.Equal(["another-boiler"], await Names(new() { Maker = " fellbeck" }));
        Assert.Equal(["held"], await Names(new() { Closing = ListedClosing.Held }));
        Assert.Equal(["unsafe"], await Names(new() { Outcome = OverallOutcome.Unsafe }));
        Assert.Equal(["plain"], await Names(new() { RecordId = "plain" }));
        Assert.Empty(await Names(new() { RecordId = "plain", Engineer = "7009999" }));
        Assert.Equal(7, await list.CountAsync(Scratch.A, new(), default));
        Assert.Equal(0, await list.CountAsync(Scratch.B, new(), default));
        Assert.Empty(await list.LatestAsync(Scratch.B, new(), null, 10, default));

        // A part goes on where the one before ended.
        var first = await list.LatestAsync(Scratch.A, new(), before: null, limit: 3, default);
        Assert.Equal(["another-day", "another-home", "another-engineer", "plain"], (await list.LatestAsync(Scratch.A, new(), first[^1].Change, 10, default)).Select(one => one.RecordId));

        var plain = Assert.Single(await list.LatestAsync(Scratch.A, new() { RecordId = "plain" }, null, 10, default));
        Assert.Equal(("Quillback", "QB-1", "P-1", "7001234", JobType.AnnualService, false), (plain.Maker, plain.SerialNumber, plain.Premises, plain.Engineer, plain.JobType, plain.Superseded));
        Assert.Equal(DateTimeOffset.Parse("2026-09-14T09:25:00Z", System.Globalization.CultureInfo.InvariantCulture), plain.FinishedAt);

        async Task<List<string>> Names(EvaluationQuery query) => [.. (await list.LatestAsync(Scratch.A, query, null, 100, default)).Select(one => one.RecordId)];
    }

    /// <summary>Of one that is superseded the change comes again, with what counts in its place.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_is_superseded_comes_again_among_the_changes(string kind)
    {
        var database = _scratch.Open(kind);
        var list = new EvaluationList(database, new Journal(database));
        var first = await Save(database, "R", record => record);
        var other = await Save(database, "other", record => record);
        Assert.Equal([(1L, first, false), (2L, other, false)], await Changes(0));

        // The same visit sent again, and then corrected under another id.
        var again = await Save(database, "R", record => record);
        Assert.Equal([(3L, again, false), (4L, first, true)], await Changes(2));
        var corrected = await Save(database, "R-corrected", record => With(record, supersedes: again));
        Assert.Equal([(5L, corrected, false), (6L, again, true)], await Changes(4));

        Assert.Equal([again, corrected], (await list.LatestAsync(Scratch.A, new() { Superseded = true }, null, 10, default)).OrderBy(one => one.EvaluationId, StringComparer.Ordinal).Select(one => one.SupersededBy));
        Assert.Equal([corrected, other], (await list.LatestAsync(Scratch.A, new() { Superseded = false }, null, 10, default)).Select(one => one.EvaluationId));
        Assert.Equal(6, (await list.ChangedAsync(Scratch.A, new() { RecordId = "nobody's" }, 1, 10, default))!.Value.UpTo);
        Assert.Equal(2, (await list.ChangedAsync(Scratch.A, new(), 0, 1, default))!.Value.UpTo);
        Assert.Null(await list.ChangedAsync(Scratch.A, new(), 7, 10, default));
        Assert.Equal(0, (await list.ChangedAsync(Scratch.B, new(), 0, 10, default))!.Value.UpTo);

        async Task<List<(long, string, bool)>> Changes(long since) =>
            [.. (await list.ChangedAsync(Scratch.A, new(), since, 100, default))!.Value.Items.Select(one => (one.Change, one.EvaluationId, one.Superseded))];
    }

    /// <summary>However much is stored, a list is searched by the index of what it is asked by.</summary>
    [Fact]
    public async Task Lists_are_searched_by_an_index()
    {
        var database = _scratch.Open("sqlite");
        foreach (var (query, index) in new (EvaluationQuery, string)[]
        {
            (new(), "visits_by_change (tenant=?"),
            (new() { Engineer = "7001234" }, "visits_of_engineer (tenant=? AND engineer_key=?"),
            (new() { Premises = "P-1" }, "visits_of_premises (tenant=? AND premises_key=?"),
            (new() { RecordId = "R-1" }, "visits_of_record (tenant=? AND record_id=?"),
            (new() { From = new(2026, 9, 14), To = new(2026, 9, 14) }, "visits_by_day (tenant=?"),
            (new() { SerialNumber = "QB-1" }, "visits_of_appliance (tenant=? AND serial_number=?"),
        })
        {
            var (sql, values) = EvaluationList.CommandOf(Scratch.A, query, 100);
            var plan = string.Join("\n", await QueryPlan.OfAsync(database, sql, values));
            Assert.Contains(index, plan, StringComparison.Ordinal);
        }
    }

    private static ServiceRecord With(
        ServiceRecord record, string engineer = "7001234", string premises = "P-1", string? finishedAt = null, string? serialNumber = null, string? maker = null, string? supersedes = null)
    {
        return new()
        {
            RecordId = record.RecordId,
            Supersedes = supersedes,
            JobType = record.JobType,
            Jurisdiction = record.Jurisdiction,
            FinishedAt = finishedAt is null ? record.FinishedAt : Timestamp.Parse(finishedAt),
            Appliance = new Appliance { Fuel = Fuel.NaturalGas, Maker = maker ?? record.Appliance.Maker, SerialNumber = serialNumber ?? record.Appliance.SerialNumber },
            Engineer = new Engineer { LicenceNumber = engineer },
            Premises = new Premises { Reference = premises },
        };
    }

    private static async Task<string> Save(
        Database database, string recordId, Func<ServiceRecord, ServiceRecord> change, OverallOutcome outcome = OverallOutcome.Pass, bool closes = true)
    {
        var evaluation = Scratch.Evaluation(Interlocked.Increment(ref _number)) with
        {
            RecordId = recordId,
            Outcome = outcome,
            Closing = new Closing { Allowed = closes, BlockedBy = [] },
        };
        Assert.True(await new EvaluationStore(database, Scratch.Rules.Law).SaveAsync(
            Scratch.A, change(With(Scratch.Record(recordId: recordId))), Scratch.Posted, evaluation, Include.Passes, default));
        return evaluation.EvaluationId!;
    }
}
