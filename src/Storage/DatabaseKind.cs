using System.Data.Common;
using System.Reflection;
using Dapper;
using DbUp;
using DbUp.Builder;
using DbUp.Engine;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Storage;

/// <summary>What one kind of database does in its own way.</summary>
internal abstract class DatabaseKind : IDisposable
{
    /// <summary>For a message; never with a password.</summary>
    public abstract string Name { get; }

    public abstract bool HasOneWriter { get; }

    public abstract string LockingC { get; }

    public abstract string NowInMilliseconds { get; }

    /// <summary>Opens the store; gives which it is.</summary>
    public abstract OpenedStore Open(StoreOpening opening);

    public abstract DbConnection Connect();

    /// <exception cref="StoreLostException">What a connection leads to is not the store that was opened.</exception>
    public abstract void DemandSame(DbConnection connection);

    /// <summary>Begins what a transaction writes: no newer version has upgraded the store by then, nor does before the transaction ends.</summary>
    /// <exception cref="StoreUpgradedException">One has.</exception>
    public abstract Task DemandKnownAsync(DbTransaction transaction, CancellationToken cancel);

    public abstract Task<bool> BackupAsync(DbConnection connection, string file, CancellationToken cancel);

    public abstract void Dispose();

    /// <summary>
    /// How many rows one statement writes. What goes over a network goes better together; SQLite is in this process, and looks the names of a
    /// statement's parameters up one by one.
    /// </summary>
    public static int RowsAtOnce(DbTransaction transaction) => transaction is SqliteTransaction ? 1 : 50;

    /// <summary>
    /// Waits until nobody else writes what this tenant's journal tells, and keeps others waiting until the transaction ends: which of two visits counts
    /// is settled by looking for the other, and an entry's number by the last one. SQLite lets one write at a time anyway. Whoever changes rows
    /// that others change as well asks for it before the first of them, or two could wait for each other.
    /// </summary>
    public static Task WriteAloneAsync(DbTransaction transaction, string tenant, CancellationToken cancel) => transaction is NpgsqlTransaction
        ? transaction.Connection!.ExecuteAsync(new CommandDefinition("SELECT pg_advisory_xact_lock(hashtextextended(@tenant, 0))", new { tenant }, transaction, cancellationToken: cancel))
        : Task.CompletedTask;

    /// <summary>The scripts are one set for both; the names of two types differ.</summary>
    protected static UpgradeEngine UpgradeOf(UpgradeEngineBuilder builder, string blob, string text) =>
        builder.WithScriptsEmbeddedInAssembly(Assembly.GetExecutingAssembly())
            .WithVariable("blob", blob)
            .WithVariable("text", text)
            .WithTransactionPerScript()
            .LogToNowhere()
            .Build();

    /// <summary>Looks at what the store is before anything is written to it. Is it to be made?</summary>
    /// <exception cref="StoreException">It is none, or not of this version.</exception>
    protected bool Inspect(UpgradeEngine upgrade, StoreOpening opening)
    {
        var isNone = upgrade.GetExecutedScripts().Count == 0;
        if (isNone && opening != StoreOpening.OrMake)
            throw new NoStoreException(Name);
        if (upgrade.GetExecutedButNotDiscoveredScripts() is [var newer, ..])
            throw new StoreException($"The store {Name} was changed by a newer version of this program ({newer}), which alone knows how to use it.");
        if (opening == StoreOpening.ToRead && upgrade.IsUpgradeRequired())
            throw new StoreException($"The store {Name} is of an older version. Start the service on it once, which brings it up to date; of a backup: restore it.");
        return isNone;
    }

    protected void Perform(UpgradeEngine upgrade)
    {
        var result = upgrade.PerformUpgrade();
        if (!result.Successful)
            throw StoreException.Of(Name, result.Error);
    }
}

/// <summary>A store that was opened.</summary>
/// <param name="Identity">Which it is.</param>
/// <param name="IsNew">Was it made just now?</param>
internal sealed record OpenedStore(StoreIdentity Identity, bool IsNew);

/// <summary>One SQLite file.</summary>
internal sealed class SqliteKind(string path) : DatabaseKind
{
    private readonly string _file = Path.GetFullPath(path);
    private SqliteOpenMode _mode = SqliteOpenMode.ReadWrite;

    /// <summary>Keeps the file that was opened from its end, so that no other can have its inode.</summary>
    private SqliteConnection? _held;

    public override string Name => _file;

    public override bool HasOneWriter => true;

    public override string LockingC => "";

    public override string NowInMilliseconds => "CAST(unixepoch('subsec') * 1000 AS INTEGER)";

    /// <summary>The file that has to be there while one process brings the tables up to date.</summary>
    public static string LockOf(string file) => file + ".upgrade";

    public override OpenedStore Open(StoreOpening opening)
    {
        if (opening == StoreOpening.ToRead)
            _mode = SqliteOpenMode.ReadOnly;
        if (opening == StoreOpening.OrMake)
            Directory.CreateDirectory(Path.GetDirectoryName(_file)!);
        else if (!File.Exists(_file))
            throw new NoStoreException(_file);
        if (opening != StoreOpening.ToRead && File.Exists(_file) && SqliteFile.IsBackup(_file))
            throw new StoreException($"The file {_file} is a backup. Copied to the place of a store it may meet the log of another one: put it there with the command store restore.");

        var isNew = opening == StoreOpening.ToRead ? Inspect(Upgrade, opening) : BringUpToDate(opening);
        _held = SqliteFile.Open(_file, _mode);
        return new OpenedStore(StoreIdentity.ReadOrGive(_held), isNew);
    }

    public override DbConnection Connect() => new SqliteConnection(ConnectionString);

    /// <summary>A new connection opens what is at the path now, an older one has what was there then: both must be what this process holds.</summary>
    public override void DemandSame(DbConnection connection)
    {
        if (SqliteFile.HasMoved(_held!) || SqliteFile.HasMoved((SqliteConnection)connection))
            throw new StoreLostException(_file);
    }

    /// <summary>A transaction that is to write holds the file's one lock from its first moment, for which an upgrade has to wait.</summary>
    public override Task DemandKnownAsync(DbTransaction transaction, CancellationToken cancel) => ScriptsOfStore.DemandKnownAsync(transaction.Connection!, transaction, cancel);

    public override async Task<bool> BackupAsync(DbConnection connection, string file, CancellationToken cancel)
    {
        // Under its name only once it is whole.
        if (File.Exists(file))
            throw new IOException($"The file {file} is there already.");
        var part = file + ".part";
        File.Delete(part);
        await connection.ExecuteAsync(new CommandDefinition("VACUUM INTO @part", new { part }, commandTimeout: 0, cancellationToken: cancel));
        await using (var copy = SqliteFile.Open(part, SqliteOpenMode.ReadWrite))
            await copy.ExecuteAsync(SqliteFile.MarkAsBackup);
        File.Move(part, file);
        return true;
    }

    public override void Dispose()
    {
        using (var connection = new SqliteConnection(ConnectionString))
            SqliteConnection.ClearPool(connection);
        _held?.Dispose();
    }

    private string ConnectionString => SqliteFile.ConnectionString(_file, _mode, isPooled: true);

    private UpgradeEngine Upgrade => UpgradeOf(DeployChanges.To.SqliteDatabase(SqliteFile.ConnectionString(_file, _mode)), blob: "BLOB", text: "TEXT");

    private bool BringUpToDate(StoreOpening opening)
    {
        using var alone = HoldAlone(LockOf(_file));
        if (!File.Exists(_file))
            SqliteFile.Open(_file, SqliteOpenMode.ReadWriteCreate).Dispose();
        var isNew = Inspect(Upgrade, opening);

        // Readers go on while one writes; the setting stays with the file.
        using var connection = SqliteFile.Open(_file, _mode);
        connection.Execute("PRAGMA journal_mode = WAL");
        Perform(Upgrade);
        StoreIdentity.ReadOrGive(connection);
        return isNew;
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
    /// <summary>Whoever holds this lock alone brings the tables up to date, and who writes shares it; the number only has to be the same everywhere.</summary>
    internal const long UpgradeLock = 0x6761732D626F696C;

    private NpgsqlDataSource? _source;
    private StoreIdentity? _identity;

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

    public override string NowInMilliseconds => "CAST(EXTRACT(EPOCH FROM clock_timestamp()) * 1000 AS BIGINT)";

    public override DbConnection Connect() => Source.CreateConnection();

    /// <summary>A connection never leads to another store than the one to which it was opened, which was asked then.</summary>
    public override void DemandSame(DbConnection connection)
    {
    }

    /// <summary>
    /// Many may share the lock for which an upgrade has to wait, and who waits for an upgrade holds nothing yet. In one trip; the second statement
    /// sees what was committed while the first one waited.
    /// </summary>
    public override async Task DemandKnownAsync(DbTransaction transaction, CancellationToken cancel)
    {
        var sql = $"SELECT pg_advisory_xact_lock_shared(@UpgradeLock); {ScriptsOfStore.SelectNewer}";
        await using var reader = await transaction.Connection!.ExecuteReaderAsync(new CommandDefinition(sql, new { UpgradeLock }, transaction, cancellationToken: cancel));
        await reader.NextResultAsync(cancel);
        if (await reader.ReadAsync(cancel))
            throw new StoreUpgradedException();
    }

    public override OpenedStore Open(StoreOpening opening)
    {
        using var connection = Connect();
        connection.Open();
        connection.Execute("SELECT pg_advisory_lock(@UpgradeLock)", new { UpgradeLock });

        // Bytewise comparison, as SQLite has it: what sorts here must not depend on the database's language.
        var upgrade = UpgradeOf(DeployChanges.To.PostgresqlDatabase(connectionString), blob: "BYTEA", text: "TEXT COLLATE \"C\"");
        var isNew = Inspect(upgrade, opening);
        if (opening != StoreOpening.ToRead)
            Perform(upgrade);
        _identity = StoreIdentity.ReadOrGive(connection);
        connection.Execute("SELECT pg_advisory_unlock(@UpgradeLock)", new { UpgradeLock });
        return new OpenedStore(_identity, isNew);
    }

    public override Task<bool> BackupAsync(DbConnection connection, string file, CancellationToken cancel) =>
        throw new NotSupportedException("The store is PostgreSQL, which has its own tool for this: pg_dump --format=custom.");

    public override void Dispose() => _source?.Dispose();

    private NpgsqlDataSource Source => _source ??= new NpgsqlDataSourceBuilder(connectionString)
        .UsePhysicalConnectionInitializer(
            connection => DemandSame(_identity is null ? null : StoreIdentity.ReadFrom(connection)),
            async connection => DemandSame(_identity is null ? null : await StoreIdentity.ReadFromAsync(connection, CancellationToken.None)))
        .Build();

    private void DemandSame(StoreIdentity? found)
    {
        if (found != _identity)
            throw new StoreLostException(Name);
    }
}
