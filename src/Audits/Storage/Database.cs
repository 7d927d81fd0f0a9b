using System.Data.Common;
using System.Globalization;
using Dapper;
using DbUp;
using Microsoft.Data.Sqlite;

namespace Audits;

/// <summary>
/// The database: one SQLite file, made on first use. Many read at once; writers of this process wait in line, since SQLite lets one
/// write at a time and would have the others poll. The stores speak plain SQL to it.
/// </summary>
public sealed class Database : IDisposable
{
    private readonly string _connectionString;
    private readonly SemaphoreSlim _writer = new(1, 1);

    private Database(string connectionString) => _connectionString = connectionString;

    /// <summary>Opens the file at <paramref name="path"/>, makes it and its folder where they are absent, and brings the tables up to date.</summary>
    /// <exception cref="StoreException">It cannot be opened or brought up to date.</exception>
    public static Database Open(string path)
    {
        var file = Path.GetFullPath(path);
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            var connectionString = new SqliteConnectionStringBuilder { DataSource = file }.ToString();

            // Readers go on while one writes; the setting stays with the file.
            using (var connection = new SqliteConnection(connectionString))
                connection.Execute("PRAGMA journal_mode = WAL");

            var upgrade = DeployChanges.To.SqliteDatabase(connectionString)
                .WithScriptsEmbeddedInAssembly(typeof(Database).Assembly)
                .WithTransactionPerScript()
                .LogToNowhere()
                .Build()
                .PerformUpgrade();
            return upgrade.Successful ? new Database(connectionString) : throw new StoreException(file, upgrade.Error);
        }
        catch (Exception fault) when (fault is SqliteException or IOException or UnauthorizedAccessException)
        {
            throw new StoreException(file, fault);
        }
    }

    /// <summary>Does the database answer?</summary>
    /// <exception cref="DbException">It does not.</exception>
    public Task PingAsync(CancellationToken cancel) =>
        ReadAsync(connection => connection.ExecuteScalarAsync<int>(new CommandDefinition("SELECT COUNT(*) FROM evaluations WHERE tenant = ''", cancellationToken: cancel)), cancel);

    /// <inheritdoc />
    public void Dispose()
    {
        using (var connection = new SqliteConnection(_connectionString))
            SqliteConnection.ClearPool(connection);
        _writer.Dispose();
    }

    internal async Task<T> ReadAsync<T>(Func<DbConnection, Task<T>> read, CancellationToken cancel)
    {
        await using var connection = new SqliteConnection(_connectionString);
        await connection.OpenAsync(cancel);
        return await read(connection);
    }

    /// <summary>All of <paramref name="write"/>, or, where it throws or answers false, nothing of it.</summary>
    internal async Task<bool> WriteAsync(Func<DbTransaction, Task<bool>> write, CancellationToken cancel)
    {
        await _writer.WaitAsync(cancel);
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
            _writer.Release();
        }
    }

    internal static string TextOf(DateTimeOffset moment) => moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'", CultureInfo.InvariantCulture);

    internal static DateTimeOffset MomentOf(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);
}

/// <summary>The store cannot be opened.</summary>
public sealed class StoreException(string file, Exception cause) : Exception($"The store {file} cannot be opened: {cause.Message}", cause);
