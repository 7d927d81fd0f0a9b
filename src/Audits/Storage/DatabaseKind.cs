using System.Data.Common;
using System.Reflection;
using Dapper;
using DbUp;
using DbUp.Builder;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Audits;

/// <summary>What one kind of database does in its own way.</summary>
internal abstract class DatabaseKind : IDisposable
{
    /// <summary>For a message; never with a password.</summary>
    public abstract string Name { get; }

    public abstract bool HasOneWriter { get; }

    public abstract string LockingC { get; }

    public abstract DbConnection Connect();

    public abstract void BringUpToDate();

    public abstract Task<bool> BackupAsync(DbConnection connection, string file, CancellationToken cancel);

    public abstract void Dispose();

    /// <summary>
    /// How many rows one statement writes. What goes over a network goes better together; SQLite is in this process, and looks the names of a
    /// statement's parameters up one by one.
    /// </summary>
    public static int RowsAtOnce(DbTransaction transaction) => transaction is SqliteTransaction ? 1 : 50;

    /// <summary>
    /// Waits until nobody else writes visits of this tenant, and keeps others waiting until the transaction ends: which of two counts is settled by
    /// looking for the other. SQLite lets one write at a time anyway.
    /// </summary>
    public static Task WriteVisitsAloneAsync(DbTransaction transaction, string tenant, CancellationToken cancel) => transaction is NpgsqlTransaction
        ? transaction.Connection!.ExecuteAsync(new CommandDefinition("SELECT pg_advisory_xact_lock(hashtextextended(@tenant, 0))", new { tenant }, transaction, cancellationToken: cancel))
        : Task.CompletedTask;

    /// <summary>The scripts are one set for both; the names of two types differ.</summary>
    protected void Upgrade(UpgradeEngineBuilder builder, string blob, string text)
    {
        var upgrade = builder.WithScriptsEmbeddedInAssembly(Assembly.GetExecutingAssembly())
            .WithVariable("blob", blob)
            .WithVariable("text", text)
            .WithTransactionPerScript()
            .LogToNowhere()
            .Build()
            .PerformUpgrade();
        if (!upgrade.Successful)
            throw new StoreException(Name, upgrade.Error);
    }
}

/// <summary>One SQLite file.</summary>
internal sealed class SqliteKind(string path) : DatabaseKind
{
    private readonly string _file = Path.GetFullPath(path);

    public override string Name => _file;

    public override bool HasOneWriter => true;

    public override string LockingC => "";

    private string ConnectionString => new SqliteConnectionStringBuilder { DataSource = _file }.ToString();

    public override DbConnection Connect() => new SqliteConnection(ConnectionString);

    public override void BringUpToDate()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(_file)!);
        using var alone = HoldAlone(_file + ".upgrade");

        // Readers go on while one writes; the setting stays with the file.
        using (var connection = new SqliteConnection(ConnectionString))
            connection.Execute("PRAGMA journal_mode = WAL");
        Upgrade(DeployChanges.To.SqliteDatabase(ConnectionString), blob: "BLOB", text: "TEXT");
    }

    public override async Task<bool> BackupAsync(DbConnection connection, string file, CancellationToken cancel)
    {
        await connection.ExecuteAsync(new CommandDefinition("VACUUM INTO @file", new { file }, commandTimeout: 0, cancellationToken: cancel));
        return true;
    }

    public override void Dispose()
    {
        using var connection = new SqliteConnection(ConnectionString);
        SqliteConnection.ClearPool(connection);
    }

    /// <summary>Several processes may open the file at once, and only one may change its tables. The system lets go of the lock when its holder ends.</summary>
    private static FileStream HoldAlone(string file)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (attempt < 200 && File.Exists(file))
            {
                Thread.Sleep(50);
            }
        }
    }
}

/// <summary>A PostgreSQL database.</summary>
internal sealed class PostgreSqlKind(string connectionString) : DatabaseKind
{
    /// <summary>Whoever holds this lock brings the tables up to date; the number only has to be the same everywhere.</summary>
    private const long UpgradeLock = 0x6761732D626F696C;

    private NpgsqlDataSource? _source;

    /// <summary>Without the connection string, which may hold a password; it may also be none.</summary>
    public override string Name
    {
        get
        {
            try
            {
                var parts = new NpgsqlConnectionStringBuilder(connectionString);
                return $"{parts.Database} on {parts.Host}";
            }
            catch (ArgumentException)
            {
                return "of the connection string";
            }
        }
    }

    public override bool HasOneWriter => false;

    public override string LockingC => "FOR UPDATE OF c SKIP LOCKED";

    public override DbConnection Connect() => (_source ??= NpgsqlDataSource.Create(connectionString)).CreateConnection();

    public override void BringUpToDate()
    {
        using var connection = Connect();
        connection.Open();
        connection.Execute("SELECT pg_advisory_lock(@UpgradeLock)", new { UpgradeLock });

        // Bytewise comparison, as SQLite has it: what sorts here must not depend on the database's language.
        Upgrade(DeployChanges.To.PostgresqlDatabase(connectionString), blob: "BYTEA", text: "TEXT COLLATE \"C\"");
        connection.Execute("SELECT pg_advisory_unlock(@UpgradeLock)", new { UpgradeLock });
    }

    public override Task<bool> BackupAsync(DbConnection connection, string file, CancellationToken cancel) =>
        throw new NotSupportedException("The store is PostgreSQL, which has its own tool for this: pg_dump --format=custom.");

    public override void Dispose() => _source?.Dispose();
}
