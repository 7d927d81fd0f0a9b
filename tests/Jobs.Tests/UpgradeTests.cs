using Dapper;
using DbUp;
using Findings;
using Jobs.Backfill;
using Jobs.Queue;
using Microsoft.Data.Sqlite;
using Npgsql;
using Storage;

namespace Jobs.Tests;

/// <summary>
/// A store as an older version of the service made and filled it (Upgrade/store-of-0010.sqlite, scripts up to 0010): one evaluation, one
/// profile, an audit of three records that was completed, and one that still waited. For PostgreSQL the same rows in tables of that version.
/// </summary>
public sealed class UpgradeTests : IDisposable
{
    private const string Evaluation = "01a21277-b147-7d87-9eb6-7b907ea639c0";
    private const string Completed = "01a21277-b18f-7580-96a6-16373b08c1d9";
    private const string Waiting = "01a21277-c192-7129-9c89-3e9201600aae";

    private static readonly string Older = Path.Combine(AppContext.BaseDirectory, "Upgrade", "store-of-0010.sqlite");

    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_an_older_store_holds_is_found_unchanged_and_gone_on_with(string kind)
    {
        using var database = kind == "sqlite" ? OpenCopy() : OpenPostgreSql();

        var found = (await new EvaluationStore(database, Scratch.Rules.Law).FindAsync(Tenant.Local, Evaluation, default))!;
        Assert.Equal(("HB-0001", OverallOutcome.Pass), (found.Evaluation.RecordId, found.Evaluation.Outcome));

        // It was judged while one hash stood for law and code.
        Assert.Matches("^[0-9a-f]{64}$", found.Evaluation.RuleSet.LawHash);
        Assert.Equal(found.Evaluation.RuleSet.LawHash, found.Evaluation.RuleSet.CodeHash);
        Assert.Equal(300, (await new ProfileStore(database).FindAsync(Tenant.Local, "qb-25", null, default))!.Limits.CoPpmMax);
        var audits = new AuditStore(database, TimeProvider.System);
        var summary = (await audits.FindAsync(Tenant.Local, Completed, default))!.Summary!;
        Assert.Equal(1, summary.Outcomes.Unsafe);
        Assert.Equal((found.Evaluation.RuleSet.LawHash, found.Evaluation.RuleSet.CodeHash, 2), summary.RuleSets.Select(set => (set.LawHash, set.CodeHash, set.Records)).Single());
        Assert.Equal(3, (await audits.LinesAsync(Tenant.Local, Completed, default)).Count);

        // What was stored before it counted as a visit is one, with its due dates.
        Assert.True(await new UnfinishedVisits(database, new ProfileStore(database), AuditBench.VisitsBy(TimeProvider.System)).RunAsync(default));
        var (visits, _) = await new TimelineStore(database, new HistoryStore(database, Scratch.Rules.Law)).EvaluationsAsync(Tenant.Local, "QB-25-004711", null, TimeProvider.System.GetUtcNow(), null, 10, default);
        Assert.Superset(new HashSet<string>([Evaluation, $"{Completed}.000000001"]), visits.Select(visit => visit.EvaluationId).ToHashSet());
        var due = await new DueStore(database).PageAsync(Tenant.Local, new(2020, 1, 1), new(2040, 1, 1), null, 500, default);
        Assert.Contains(due, date => date.Kind == DueKind.AnnualService && date.EvaluationId!.StartsWith(Completed, StringComparison.Ordinal));

        // So are premises and day: of each row, and of what the report names.
        var unplaced = new UnplacedLines(database);
        Assert.True(await unplaced.RunAsync(default));
        Assert.False(await unplaced.RunAsync(default));
        var placed = await new FindingStore(database).PageAsync(Tenant.Local, Completed, AuditBench.AnyRow, null, 500, default);
        Assert.All(placed, row => Assert.Equal(row.Outcome == FindingRow.Rejected ? (null, null) : ("P-77", new DateOnly(2026, 9, 14)), (row.Premises, row.VisitedOn)));
        Assert.Equal(2, placed.Select(row => row.Outcome == FindingRow.Rejected).Distinct().Count());
        var danger = Assert.Single(await audits.UnsafeAsync(Tenant.Local, Completed, default));
        Assert.Equal(("P-77", new DateOnly(2026, 9, 14), "7001234"), (danger.Record.Premises, danger.Record.VisitedOn, danger.Record.Engineer));

        // So do its entries of the journal, in the order of its times, though an audit still waits.
        Assert.True(await new UnjournaledEntries(database).RunAsync(default));
        Assert.False(await new UnjournaledEntries(database).RunAsync(default));
        var entries = await new Journal(database).ReadAsync(Tenant.Local, 0, 100, default);
        Assert.Equal([1L, 2L, 3L, 4L], entries.Select(entry => entry.Seq));
        Assert.Equal(entries.OrderBy(entry => entry.At), entries);
        Assert.Equal(["qb-25.1"], entries.Where(entry => entry.Kind == JournalKind.Profile).Select(entry => entry.Id));
        var said = Assert.Single(entries, entry => entry.Id == Evaluation);
        Assert.Equal((found.Evaluation.InputHash, found.Evaluation.ResultHash, found.Evaluation.RuleSet.LawHash, found.Evaluation.RuleSet.CodeHash), (said.InputHash, said.ResultHash, said.LawHash, said.CodeHash));

        // And the list of evaluations says when it knows all of them.
        var list = new EvaluationList(database, new Journal(database));
        Assert.True(await list.IsIncompleteAsync(Tenant.Local, default));
        Assert.True(await new UnlistedVisits(database).RunAsync(default));
        Assert.False(await new UnlistedVisits(database).RunAsync(default));
        Assert.False(await list.IsIncompleteAsync(Tenant.Local, default));
        var places = await database.ReadAsync(connection => connection.QueryAsync<(string, string, string)>("SELECT DISTINCT premises_key, engineer_key, started_at FROM visits"), default);
        Assert.Contains(("P-77", "7001234"), places.Select(place => (place.Item1, place.Item2)));
        var listed = await list.LatestAsync(Tenant.Local, new() { Engineer = "7001234", Premises = "P-77" }, null, 10, default);
        Assert.Contains(listed, one => one.EvaluationId.StartsWith(Completed, StringComparison.Ordinal) && one.Outcome == OverallOutcome.Unsafe);
        Assert.Equal(entries.Where(entry => entry.Kind == JournalKind.Evaluation).Select(entry => (entry.Seq, entry.Id)), (await list.ChangedAsync(Tenant.Local, new(), 0, 10, default))!.Value.Items.Select(one => (one.Change, one.EvaluationId)));

        var worker = AuditBench.WorkerOn(database, TimeProvider.System);
        while (await worker.RunOneAsync(default))
        {
        }

        var waited = (await audits.FindAsync(Tenant.Local, Waiting, default))!;
        Assert.Equal((AuditState.Completed, 2, 1), (waited.State, waited.Records.Judged, waited.Records.Rejected));
        var rows = await new FindingStore(database).PageAsync(Tenant.Local, Waiting, AuditBench.AnyRow with { Outcome = "unsafe" }, null, 500, default);
        Assert.Equal([2L], rows.Select(row => row.Line).Distinct());
    }

    private Database OpenCopy()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(_scratch.File)!);
        File.Copy(Older, _scratch.File);
        return Database.Open(_scratch.File);
    }

    private static Database OpenPostgreSql()
    {
        var connectionString = PrivatePostgreSql.NewDatabase();
        Assert.True(DeployChanges.To.PostgresqlDatabase(connectionString)
            .WithScriptsEmbeddedInAssembly(typeof(Database).Assembly, name => string.CompareOrdinal(name, "0011") < 0)
            .WithVariable("blob", "BYTEA").WithVariable("text", "TEXT COLLATE \"C\"").LogToNowhere().Build().PerformUpgrade().Successful);
        using var older = new SqliteConnection($"Data Source={Older};Mode=ReadOnly;Pooling=False");
        using var newer = new NpgsqlConnection(connectionString);
        newer.Open();
        foreach (var table in new[] { "evaluations", "appliance_profiles", "audits", "audit_chunks", "audit_lines", "audit_findings", "idempotency_keys" })
        {
            foreach (IDictionary<string, object?> row in older.Query($"SELECT * FROM {table}"))
            {
                newer.Execute($"INSERT INTO {table} ({string.Join(", ", row.Keys)}) VALUES ({string.Join(", ", row.Keys.Select(column => "@" + column))})",
                    new DynamicParameters(row.ToDictionary(column => column.Key, column => column.Value)));
            }
        }

        return Database.OpenPostgreSql(connectionString);
    }
}
