using Dapper;
using Findings;
using Jobs.Backfill;
using Storage;
using static Storage.Tests.Shared.Journaled;

namespace Jobs.Tests;

/// <summary>What jobs write into the journal.</summary>
public sealed class JournalTests
{
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Of_an_audit_each_judged_record_has_an_entry_and_each_that_goes_another(string kind)
    {
        using var bench = new AuditBench(kind);
        var audit = await bench.Intake.ReceiveAsync(Scratch.A, null, AuditBench.Month(120).ToAsyncEnumerable(), () => "h", default, keyId: "key-3");
        await bench.WorkOff();

        var said = await All(bench.Store, Scratch.A);
        var lines = (await bench.Audits.LinesAsync(Scratch.A, audit.AuditId!, default)).Where(line => line.Evaluation is not null).ToList();
        Assert.Equal(96, lines.Count);
        Assert.Equal(lines.Select(line => $"evaluation {line.Evaluation!.EvaluationId} key-3 {line.Evaluation.ResultHash}"), said.Select(entry => $"{Text(entry).Split(' ', 2)[1]} {entry.ResultHash}"));

        // Only what belongs to no landlord goes so soon.
        await bench.Store.WriteAsync(async transaction => await transaction.Connection!.ExecuteAsync("UPDATE audit_lines SET landlord = 0", transaction: transaction) > 0, default);
        await new Retention(bench.Store, Scratch.Rules.Law, bench.Clock).PurgeAsync(Scratch.A, new(2030, 1, 1, 0, 0, 0, TimeSpan.Zero), _ => { }, default);
        var gone = (await All(bench.Store, Scratch.A)).Skip(said.Count).ToList();
        Assert.Equal(said.Select(entry => entry.Id).Order(StringComparer.Ordinal), gone.Select(entry => entry.Id).Order(StringComparer.Ordinal));
        Assert.All(gone, entry => Assert.Equal(JournalKind.Purge, entry.Kind));
        Dense(said.Concat(gone), 192);
    }

    /// <summary>Posted records, profiles and an audit at once, each through a handle of its own as three instances would, and one who reads along.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Of_10000_entries_by_three_writers_none_is_missing_none_twice_and_none_is_seen_before_an_earlier_one(string kind)
    {
        const int Each = 3400;
        using var bench = new AuditBench(kind);
        await bench.Post(AuditBench.Month(Each * 5 / 4).Where(line => line.Number % 5 != 3));
        var (posting, saving) = (new EvaluationStore(bench.OpenAnother(), Scratch.Rules.Law), new ProfileStore(bench.OpenAnother()));
        var judged = Scratch.Evaluation();

        using var done = new CancellationTokenSource();
        var reading = Task.Run(() => ReadAlong(bench.OpenAnother(), done.Token));
        await Task.WhenAll(
            Task.Run(() => bench.WorkOff(bench.Worker)),
            Task.Run(async () =>
            {
                for (var number = 0; number < Each; number++)
                {
                    var evaluation = judged with { EvaluationId = Guid.CreateVersion7(Now.AddMinutes(number)).ToString() };
                    Assert.True(await posting.SaveAsync(Scratch.A, Scratch.Record(recordId: $"P-{number}"), Scratch.Posted, evaluation, Include.Passes, default));
                }
            }),
            Task.Run(async () =>
            {
                for (var number = 0; number < Each; number++)
                    Assert.NotNull(await saving.SaveAsync(Scratch.A, $"p-{number % 7}", Limits, Now, default));
            }));
        await done.CancelAsync();
        var (seen, polls) = await reading;

        Dense(await All(bench.Store, Scratch.A), 3 * Each);
        Assert.Equal(3 * Each, seen);
        Assert.True(polls > 50, $"Only {polls} of the polls saw something new.");
        Assert.Equal(
            [(JournalKind.Evaluation, 2 * Each), (JournalKind.Profile, Each)],
            (await All(bench.Store, Scratch.A)).GroupBy(entry => entry.Kind).Select(same => (same.Key, same.Select(entry => entry.Id).Distinct().Count())).OrderBy(same => same.Key));
    }

    /// <summary>What an older version wrote has no entry yet; two instances make them at once.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_was_stored_before_gets_entries_once_in_the_order_of_its_times(string kind)
    {
        using var bench = new AuditBench(kind);
        await bench.Post(AuditBench.Month(300));
        await bench.WorkOff();
        await new ProfileStore(bench.Store).SaveAsync(Scratch.A, "p", Limits, Now, default);
        var (first, second) = (Scratch.Evaluation(0), Scratch.Evaluation(1));
        await Save(bench.Store, Scratch.A, first);
        await Save(bench.Store, Scratch.A, second, supersedes: first.EvaluationId);
        await Save(bench.Store, Scratch.B, first);
        var before = (await All(bench.Store, Scratch.A)).Select(Said).Order(StringComparer.Ordinal).ToList();
        await bench.Store.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync(
                "DELETE FROM journal; UPDATE visits SET in_journal = 0, replaced_in_journal = 0; UPDATE appliance_profiles SET in_journal = 0", transaction: transaction) > 0, default);

        // The new version writes meanwhile, and takes the place of a visit that has no entry yet.
        await Save(bench.Store, Scratch.A, Scratch.Evaluation(2), supersedes: second.EvaluationId);
        await Task.WhenAll(new[] { bench.Store, bench.OpenAnother() }.Select(database => Task.Run(async () =>
        {
            while (await new UnjournaledEntries(database).RunAsync(default))
            {
            }
        })));

        var made = await All(bench.Store, Scratch.A);
        Dense(made, before.Count + 2);
        var listed = (await new EvaluationList(bench.Store, new Journal(bench.Store)).ChangedAsync(Scratch.A, new(), 0, 1000, default))!.Value;
        Assert.Equal(made.Where(entry => entry.Kind != JournalKind.Profile).GroupBy(entry => entry.Id).Select(same => same.Max(entry => entry.Seq)).Order(), listed.Items.Select(one => one.Change));
        Assert.Equal(made[^1].Seq, listed.UpTo);
        Assert.Equal(before, made.Skip(2).Select(Said).Order(StringComparer.Ordinal));
        Assert.Equal(made.Skip(2).Select(entry => entry.At).Order(), made.Skip(2).Select(entry => entry.At));
        Assert.Single(await All(bench.Store, Scratch.B));

        // Hashes of a replacement are known only to who made it.
        static string Said(JournalEntry entry) => $"{entry.Kind} {entry.Id} {entry.At:O} {(entry.Kind == JournalKind.Supersession ? "" : $"{entry.InputHash} {entry.ResultHash} {entry.LawHash} {entry.CodeHash}")}";
    }

    /// <summary>Each poll must go on where the last one ended.</summary>
    private static async Task<(long Last, int Polls)> ReadAlong(Database database, CancellationToken done)
    {
        var journal = new Journal(database);
        for (var (last, polls) = (0L, 0); ;)
        {
            var isLast = done.IsCancellationRequested;
            var next = await journal.ReadAsync(Scratch.A, last, 100, default);
            Assert.Equal(Enumerable.Range(1, next.Count).Select(place => last + place), next.Select(entry => entry.Seq));
            last += next.Count;
            polls += next.Count > 0 ? 1 : 0;
            if (isLast && next.Count == 0)
                return (last, polls);
        }
    }
}
