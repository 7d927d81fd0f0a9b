using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;

namespace Storage;

/// <summary>Puts a backup into the place of a SQLite store whose service has ended. Whatever goes wrong, what was there before is still there.</summary>
public static class StoreRestore
{
    private const string Counts = """
        SELECT (SELECT COUNT(*) FROM evaluations) AS Evaluations, (SELECT MAX(evaluated_at) FROM evaluations) AS LastEvaluatedAt,
            (SELECT COUNT(*) FROM audits) AS Audits, (SELECT COUNT(*) FROM api_keys WHERE revoked_at IS NULL) AS Keys
        """;

    /// <summary>Checks the backup, keeps what was in the store's place under another name, and puts a copy of the backup there.</summary>
    /// <param name="backup">The backup; it is only read.</param>
    /// <param name="store">The file of the store, which may be absent or damaged.</param>
    /// <param name="now">By which the older store is named.</param>
    /// <param name="cancel">Gives up; nothing is restored.</param>
    /// <exception cref="StoreException">The backup is not whole, no store's or a newer version's, or the store is in use; nothing is restored.</exception>
    public static async Task<RestoredStore> RunAsync(string backup, string store, DateTimeOffset now, CancellationToken cancel)
    {
        var (from, to) = (Path.GetFullPath(backup), Path.GetFullPath(store));
        if (!File.Exists(from))
            throw new StoreException($"There is no file {from}.");
        if (from == to)
            throw new StoreException($"{from} is the place of the store itself. Keep the backup elsewhere: what lies beside the place, such as an old log, belongs to another store.");

        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        var copy = to + ".restoring";
        try
        {
            Clear(copy);
            await CopyAsync(from, copy, cancel);
            var restored = await RenewAsync(from, copy, to, cancel);
            var kept = Keep(to, now);
            Array.ForEach(SqliteFile.LogOf(to), File.Delete);
            if (kept is not null && !OperatingSystem.IsWindows())
                File.SetUnixFileMode(copy, File.GetUnixFileMode(to));
            File.Move(copy, to, overwrite: true);
            return restored with { Kept = kept };
        }
        catch (SqliteException fault)
        {
            throw new StoreException($"{from} cannot be restored: {fault.Message}", fault);
        }
        finally
        {
            Clear(copy);
        }
    }

    private static async Task CopyAsync(string from, string copy, CancellationToken cancel)
    {
        await using (var source = SqliteFile.Open(from, SqliteOpenMode.ReadOnly))
        {
            var said = await source.QueryFirstAsync<string>(new CommandDefinition("PRAGMA integrity_check(1)", commandTimeout: 0, cancellationToken: cancel));
            if (said != "ok")
                throw new StoreException($"{from} is damaged: {said.ReplaceLineEndings(" ")}");
            await source.ExecuteAsync(new CommandDefinition("VACUUM INTO @copy", new { copy }, commandTimeout: 0, cancellationToken: cancel));
        }

        await using var target = SqliteFile.Open(copy, SqliteOpenMode.ReadWrite);
        await target.ExecuteAsync(SqliteFile.MarkAsStore);
    }

    /// <summary>
    /// Makes sure that nobody has the store open, and takes its log into it: SQLite leaves the mode in which readers go on only to the last one
    /// that has the file open. Gives who the store is; null where it is absent, damaged or a backup that was copied there.
    /// </summary>
    private static StoreIdentity? Release(string store)
    {
        if (!File.Exists(store) || SqliteFile.IsBackup(store))
            return null;

        try
        {
            using var connection = SqliteFile.Open(store, SqliteOpenMode.ReadWrite, patience: 1);
            connection.Execute("PRAGMA journal_mode = DELETE");
            return StoreIdentity.ReadFrom(connection);
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode is SQLitePCL.raw.SQLITE_BUSY or SQLitePCL.raw.SQLITE_LOCKED)
        {
            throw new StoreException($"The store {store} is in use: end the service first. Nothing was restored.", fault);
        }
        catch (SqliteException)
        {
            return null;
        }
    }

    /// <summary>Brings the copy up to date and, once the store is released, gives it the next generation.</summary>
    private static async Task<RestoredStore> RenewAsync(string from, string copy, string store, CancellationToken cancel)
    {
        using var database = OpenCopy(from, copy);
        var before = Release(store);
        var generation = Math.Max(database.Identity.Generation, before?.Id == database.Identity.Id ? before.Generation : 0) + 1;
        var identity = database.Identity with { Generation = generation };
        await database.WriteAsync(
            async transaction =>
            {
                await identity.SaveAsync(transaction, cancel);
                return true;
            },
            cancel);
        return await database.ReadAsync(connection => connection.QuerySingleAsync<RestoredStore>(new CommandDefinition(Counts, cancellationToken: cancel)), cancel) with { Identity = identity };
    }

    private static Database OpenCopy(string from, string copy)
    {
        try
        {
            return Database.Open(copy);
        }
        catch (NoStoreException none)
        {
            throw new StoreException($"{from} is no backup of a store.", none);
        }
    }

    /// <summary>Copies what is in the place of the store beside it; a rename would leave the place empty for a moment.</summary>
    private static string? Keep(string store, DateTimeOffset now)
    {
        if (!File.Exists(store))
            return null;

        var kept = string.Create(CultureInfo.InvariantCulture, $"{store}.before-{now.UtcDateTime:yyyyMMdd'T'HHmmss'Z'}");
        foreach (var (file, to) in SqliteFile.WithItsLog(store).Zip(SqliteFile.WithItsLog(kept)))
        {
            if (File.Exists(file))
                File.Copy(file, to);
        }

        return kept;
    }

    private static void Clear(string copy)
    {
        foreach (var file in SqliteFile.WithItsLog(copy).Append(copy + "-journal").Append(SqliteKind.LockOf(copy)))
            File.Delete(file);
    }
}

/// <summary>What was restored.</summary>
public sealed record RestoredStore
{
    /// <summary>How many evaluations of single records it holds.</summary>
    public required long Evaluations { get; init; }

    /// <summary>When the last of them was made (RFC 3339, UTC); null: there is none.</summary>
    public string? LastEvaluatedAt { get; init; }

    /// <summary>How many audits.</summary>
    public required long Audits { get; init; }

    /// <summary>How many keys that were not revoked when the backup was made.</summary>
    public required long Keys { get; init; }

    /// <summary>Which store it is now.</summary>
    public StoreIdentity Identity { get; init; } = new("", 0);

    /// <summary>Where what was in its place before is kept; null: there was nothing.</summary>
    public string? Kept { get; init; }
}
