using Dapper;
using Storage.Tests.Shared;

namespace Storage.Tests;

/// <summary>A newer version that upgrades a store while this one writes to it: either is done before the other begins.</summary>
public sealed class NewerVersionTests : IDisposable
{
    private const string Upgrade = "INSERT INTO schemaversions (scriptname, applied) VALUES ('9001-of-a-newer-version.sql', '2030-01-01')";

    /// <summary>Somebody waits for a lock of this kind in this database.</summary>
    private const string IsWaitedFor = """
        SELECT COUNT(*) FROM pg_locks
        WHERE locktype = 'advisory' AND NOT granted AND database = (SELECT oid FROM pg_database WHERE datname = current_database())
        """;

    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_write_that_had_to_wait_for_an_upgrade_comes_to_nothing(string kind)
    {
        var (older, newer) = (_scratch.Open(kind), _scratch.Open(kind));
        var writing = Task.FromResult(false);
        await newer.ReadAsync(
            async connection =>
            {
                await using var upgrade = await connection.BeginTransactionAsync();
                if (kind == "postgresql")
                    await connection.ExecuteAsync("SELECT pg_advisory_xact_lock(@UpgradeLock)", new { PostgreSqlKind.UpgradeLock }, upgrade);
                await connection.ExecuteAsync(Upgrade, transaction: upgrade);
                writing = Task.Run(() => Journaled.Save(older, Scratch.A, Scratch.Evaluation()));
                await Task.Delay(200);
                Assert.False(writing.IsCompleted);
                await upgrade.CommitAsync();
                return true;
            },
            default);

        await Assert.ThrowsAsync<StoreUpgradedException>(() => writing);
        Assert.Empty(await Journaled.All(older, Scratch.A));
        await Assert.ThrowsAsync<StoreUpgradedException>(() => older.DemandWellAsync(default));
        Assert.Throws<StoreException>(() => _scratch.Open(kind));
    }

    /// <summary>SQLite lets nobody write beside a writer.</summary>
    [Theory]
    [PostgreSql]
    public async Task An_upgrade_waits_for_a_write_that_has_begun(string kind)
    {
        var older = _scratch.Open(kind);
        var (hasBegun, mayEnd) = (new TaskCompletionSource(), new TaskCompletionSource());
        var writing = older.WriteAsync(
            async _ =>
            {
                hasBegun.SetResult();
                await mayEnd.Task;
                return true;
            },
            default);
        await hasBegun.Task;

        var opening = Task.Run(() => _scratch.Open(kind));
        for (var patience = 300; await older.ReadAsync(connection => connection.ExecuteScalarAsync<int>(IsWaitedFor), default) == 0 && patience > 0; patience--)
            await Task.Delay(100);
        Assert.False(opening.IsCompleted);
        mayEnd.SetResult();

        Assert.True(await writing);
        await (await opening).DemandWellAsync(default);
    }
}
