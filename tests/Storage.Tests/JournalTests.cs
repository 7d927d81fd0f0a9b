using System.Collections.Concurrent;
using System.Data.Common;
using Dapper;
using Findings;
using Storage.Tests.Shared;
using static Storage.Tests.Shared.Journaled;

namespace Storage.Tests;

public sealed class JournalTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Everything_that_is_written_has_an_entry(string kind)
    {
        var database = _scratch.Open(kind);
        var (first, second) = (Scratch.Evaluation(0), Scratch.Evaluation(1));
        await new ProfileStore(database).SaveAsync(Scratch.A, "p", Limits, Now, default, keyId: "key-1");
        await Save(database, Scratch.A, first, keyId: "key-2");
        await Save(database, Scratch.A, second, supersedes: first.EvaluationId);
        var owned = (await new Retention(database, Scratch.Rules.Law, new ManualClock { Now = Now }).PurgeAsync(Scratch.A, Now.AddYears(1), _ => { }, default)).Evaluations;

        var entries = await All(database, Scratch.A);

        // Whose the example is is not recorded, so that nothing of it may go.
        Assert.Equal(0, owned);
        Assert.Equal(["1 profile p.1 key-1", $"2 evaluation {first.EvaluationId} key-2", $"3 evaluation {second.EvaluationId} ", $"4 supersession {first.EvaluationId} "], entries.Select(Text));
        Assert.Equal((first.InputHash, first.ResultHash, first.RuleSet.LawHash, first.RuleSet.CodeHash, first.EvaluatedAt), (entries[1].InputHash, entries[1].ResultHash, entries[1].LawHash, entries[1].CodeHash, entries[1].At));
        Assert.Equal((second.InputHash, second.ResultHash), (entries[3].InputHash, entries[3].ResultHash));
        Assert.Equal((64, null), (entries[0].InputHash!.Length, entries[0].ResultHash));
        Assert.All(entries, entry => Assert.Equal(16, entry.Salt.Length));
        Assert.Equal(4, entries.Select(entry => Convert.ToHexString(entry.Salt.Span)).Distinct().Count());
        Assert.Equal([3L], (await new Journal(database).ReadAsync(Scratch.A, after: 2, limit: 1, default)).Select(entry => entry.Seq));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_write_that_comes_to_nothing_takes_no_number(string kind)
    {
        var database = _scratch.Open(kind);
        var first = Scratch.Evaluation();
        await Save(database, Scratch.A, first);

        await Assert.ThrowsAnyAsync<DbException>(() => Save(database, Scratch.A, first));
        Assert.False(await Save(database, Scratch.A, Scratch.Evaluation(1), supersedes: "none"));
        Assert.Null(await new ProfileStore(database).SaveAsync(Scratch.A, "p", Limits, Now, default, after: 7));
        await Assert.ThrowsAsync<KeyLostException>(() => new EvaluationStore(database, Scratch.Rules.Law).SaveAsync(
            Scratch.A, Scratch.Record(), Scratch.Posted, Scratch.Evaluation(2), Include.Passes, default, keyed: new KeyedRequest("k", "f", "nobody's")));
        await Assert.ThrowsAsync<IOException>(() => database.WriteAsync(
            async transaction =>
            {
                await Journal.AppendAsync(transaction, Scratch.A.Name, [new NewEntry(JournalKind.Decision, "d", "t", null)], default);
                throw new IOException("After the entry was written.");
            },
            default));
        await Save(database, Scratch.A, Scratch.Evaluation(3));
        await Save(database, Scratch.B, Scratch.Evaluation(4));

        Assert.Equal([1L, 2L, 3L], (await All(database, Scratch.A)).Select(entry => entry.Seq));
        Assert.Equal([JournalKind.Evaluation, JournalKind.Evaluation, JournalKind.Supersession], (await All(database, Scratch.A)).Select(entry => entry.Kind));
        Assert.Equal([1L], (await All(database, Scratch.B)).Select(entry => entry.Seq));
    }

    /// <summary>Connections that end in the middle of a write, after it has its number, as those of a killed process do.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Who_is_cut_off_in_the_middle_leaves_no_gap(string kind)
    {
        var database = _scratch.Open(kind);
        var numbers = new ConcurrentBag<int>();
        await Task.WhenAll(Enumerable.Range(0, 200).Select(number => Task.Run(async () =>
        {
            try
            {
                await database.WriteAsync(
                    async transaction =>
                    {
                        await Journal.AppendAsync(transaction, Scratch.A.Name, [new NewEntry(JournalKind.Decision, $"{number}", Database.TextOf(Now), null)], default);
                        if (number % 3 == 0)
                        {
                            var connection = transaction.Connection!;
                            if (kind == "postgresql")
                                await connection.ExecuteAsync("SELECT pg_terminate_backend(pg_backend_pid())", transaction: transaction);
                            await connection.CloseAsync();
                            throw new IOException("Cut off.");
                        }

                        return true;
                    },
                    default);
                numbers.Add(number);
            }
            catch (Exception fault) when (number % 3 == 0 && fault is DbException or IOException or InvalidOperationException)
            {
                // As intended.
            }
        })));

        var entries = await All(database, Scratch.A);
        Dense(entries, 133);
        Assert.Equal(numbers.Order(), entries.Select(entry => int.Parse(entry.Id, System.Globalization.CultureInfo.InvariantCulture)).Order());
    }
}
