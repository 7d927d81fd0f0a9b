using System.Data.Common;
using System.Globalization;
using Dapper;

namespace Audits;

/// <summary>
/// The database: one SQLite file, made on first use, or a PostgreSQL database. The stores speak one plain SQL to either; what differs
/// is in <see cref="DatabaseKind"/>. In SQLite many read at once and writers of this process wait in line, since it lets one write at a
/// time and would have the others poll.
/// </summary>
public sealed class Database : IDisposable
{
    private readonly DatabaseKind _kind;
    private readonly SemaphoreSlim? _writer;

    private Database(DatabaseKind kind)
    {
        _kind = kind;
        _writer = kind.HasOneWriter ? new SemaphoreSlim(1, 1) : null;
    }

    /// <summary>Opens the file at <paramref name="path"/>, makes it and its folder where they are absent, and brings the tables up to date.</summary>
    /// <exception cref="StoreException">It cannot be opened or brought up to date.</exception>
    public static Database Open(string path) => Open(new SqliteKind(path));

    /// <summary>Opens the PostgreSQL database that <paramref name="connectionString"/> names and brings the tables up to date.</summary>
    /// <exception cref="StoreException">It cannot be reached or brought up to date.</exception>
    public static Database OpenPostgreSql(string connectionString) => Open(new PostgreSqlKind(connectionString));

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
    }

    /// <summary>Ends a SELECT that is about to change the rows it finds as c: others pass over them meanwhile.</summary>
    internal string LockingC => _kind.LockingC;

    internal async Task<T> ReadAsync<T>(Func<DbConnection, Task<T>> read, CancellationToken cancel)
    {
        await using var connection = _kind.Connect();
        await connection.OpenAsync(cancel);
        return await read(connection);
    }

    /// <summary>All of <paramref name="write"/>, or, where it throws or answers false, nothing of it.</summary>
    internal async Task<bool> WriteAsync(Func<DbTransaction, Task<bool>> write, CancellationToken cancel)
    {
        await (_writer?.WaitAsync(cancel) ?? Task.CompletedTask);
        try
        {
            return await ReadAsync(
                async connection =>
                {
                    await using var transaction = await connection.BeginTransactionAsync(cancel);
                    var isWritten = await write(transaction);
                    if (isWritten)
                        await transaction.CommitAsync(cancel);
                    return isWritten;
                },
                cancel);
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

    private static Database Open(DatabaseKind kind)
    {
        try
        {
            kind.BringUpToDate();
            return new Database(kind);
        }
        catch (Exception fault) when (fault is DbException or IOException or UnauthorizedAccessException or System.Net.Sockets.SocketException or ArgumentException)
        {
            kind.Dispose();
            throw new StoreException(kind.Name, fault);
        }
        catch (StoreException)
        {
            kind.Dispose();
            throw;
        }
    }
}

/// <summary>The store cannot be opened.</summary>
public sealed class StoreException(string name, Exception cause) : Exception($"The store {name} cannot be opened: {cause.Message}", cause);
