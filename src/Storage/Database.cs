using System.Data.Common;
using System.Globalization;
using Dapper;

namespace Storage;

/// <summary>
/// The database: one SQLite file, or a PostgreSQL database. The stores speak one plain SQL to either; what differs
/// is in <see cref="DatabaseKind"/>. In SQLite many read at once and writers of this process wait in line, since it lets one write at a
/// time and would have the others poll.
/// </summary>
public sealed class Database : IDisposable
{
    private readonly DatabaseKind _kind;
    private readonly SemaphoreSlim? _writer;
    private readonly WriteProbe _probe;
    private volatile bool _hasFailed;

    private Database(DatabaseKind kind, OpenedStore opened)
    {
        _kind = kind;
        _writer = kind.HasOneWriter ? new SemaphoreSlim(1, 1) : null;
        _probe = new WriteProbe(this);
        (Identity, IsNew) = opened;
    }

    /// <summary>Where it is; never with a password.</summary>
    public string Name => _kind.Name;

    /// <summary>Which store it is.</summary>
    public StoreIdentity Identity { get; }

    /// <summary>Was it made just now?</summary>
    public bool IsNew { get; }

    /// <summary>Opens the store in the file at <paramref name="path"/>.</summary>
    /// <exception cref="NoStoreException">There is none, and none is to be made.</exception>
    /// <exception cref="StoreException">It cannot be opened or brought up to date, or a newer version has changed it.</exception>
    public static Database Open(string path, StoreOpening opening = StoreOpening.ToUse) => Open(new SqliteKind(path), opening);

    /// <summary>Opens the store in the PostgreSQL database that <paramref name="connectionString"/> names.</summary>
    /// <exception cref="NoStoreException">There is none, and none is to be made.</exception>
    /// <exception cref="StoreException">It cannot be reached or brought up to date, or a newer version has changed it.</exception>
    public static Database OpenPostgreSql(string connectionString, StoreOpening opening = StoreOpening.ToUse) => Open(new PostgreSqlKind(connectionString), opening);

    /// <summary>Is it still the store that was opened, of this version, does it answer, and does it take what is written to it?</summary>
    /// <exception cref="DbException">One of it is not so.</exception>
    public async Task DemandWellAsync(CancellationToken cancel)
    {
        await PingAsync(cancel);
        if (await ReadAsync(connection => StoreIdentity.ReadFromAsync(connection, cancel), cancel) != Identity)
            throw new StoreLostException(Name);
        await ReadAsync(connection => ScriptsOfStore.DemandKnownAsync(connection, transaction: null, cancel), cancel);
        await _probe.RunAsync(cancel);
    }

    /// <summary>Does the database answer?</summary>
    /// <exception cref="DbException">It does not.</exception>
    public Task PingAsync(CancellationToken cancel) =>
        ReadAsync(connection => connection.ExecuteScalarAsync<long>(new CommandDefinition("SELECT COUNT(*) FROM evaluations WHERE tenant = ''", cancellationToken: cancel)), cancel);

    /// <summary>Copies the whole store into a file that does not exist yet.</summary>
    /// <exception cref="NotSupportedException">The database has a tool of its own for this; the message names it.</exception>
    public Task BackupAsync(string file, CancellationToken cancel) => ReadAsync(connection => _kind.BackupAsync(connection, file, cancel), cancel);

    /// <inheritdoc />
    public void Dispose()
    {
        _kind.Dispose();
        _writer?.Dispose();
        _probe.Dispose();
    }

    /// <summary>Could the last write not be done?</summary>
    internal bool HasFailed => _hasFailed;

    /// <summary>Milliseconds since 1970 by the database's own clock, in SQL: leases that several instances hold are measured by it alone.</summary>
    internal string NowInMilliseconds => _kind.NowInMilliseconds;

    /// <summary>Ends a SELECT that is about to change the rows it finds as c: others pass over them meanwhile.</summary>
    internal string LockingC => _kind.LockingC;

    internal async Task<T> ReadAsync<T>(Func<DbConnection, Task<T>> read, CancellationToken cancel)
    {
        await using var connection = _kind.Connect();
        await connection.OpenAsync(cancel);
        _kind.DemandSame(connection);
        return await read(connection);
    }

    /// <summary>All of <paramref name="write"/>, or, where it throws or answers false, nothing of it.</summary>
    /// <exception cref="StoreLostException">The store is no longer the one that was opened.</exception>
    /// <exception cref="StoreUpgradedException">A newer version has upgraded it.</exception>
    internal async Task<bool> WriteAsync(Func<DbTransaction, Task<bool>> write, CancellationToken cancel)
    {
        await (_writer?.WaitAsync(cancel) ?? Task.CompletedTask);
        try
        {
            return await ReadAsync(
                async connection =>
                {
                    await using var transaction = await connection.BeginTransactionAsync(cancel);
                    await _kind.DemandKnownAsync(transaction, cancel);
                    var isWritten = await write(transaction);
                    if (isWritten)
                    {
                        _kind.DemandSame(connection);
                        await transaction.CommitAsync(cancel);
                        _hasFailed = false;
                    }

                    return isWritten;
                },
                cancel);
        }
        catch (DbException fault) when (!IsDuplicate(fault))
        {
            _hasFailed = true;
            throw;
        }
        finally
        {
            _writer?.Release();
        }
    }

    /// <summary>As <see cref="WriteAsync"/>, once more where two writers took the same key at the same time.</summary>
    internal async Task<bool> WriteAgainAsync(Func<DbTransaction, Task<bool>> write, CancellationToken cancel)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return await WriteAsync(write, cancel);
            }
            catch (DbException fault) when (IsDuplicate(fault) && attempt < 20)
            {
                await Task.Yield();
            }
        }
    }

    internal static bool IsDuplicate(DbException fault) =>
        fault is Npgsql.PostgresException { SqlState: Npgsql.PostgresErrorCodes.UniqueViolation } or Microsoft.Data.Sqlite.SqliteException { SqliteErrorCode: 19 };

    internal static string TextOf(DateTimeOffset moment) => moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'", CultureInfo.InvariantCulture);

    internal static DateTimeOffset MomentOf(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    internal static string TextOf(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal static DateOnly DayOf(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static Database Open(DatabaseKind kind, StoreOpening opening)
    {
        try
        {
            return new Database(kind, kind.Open(opening));
        }
        catch (Exception fault) when (fault is DbException or IOException or UnauthorizedAccessException or System.Net.Sockets.SocketException or ArgumentException)
        {
            kind.Dispose();
            throw StoreException.Of(kind.Name, fault);
        }
        catch (StoreException)
        {
            kind.Dispose();
            throw;
        }
    }
}
