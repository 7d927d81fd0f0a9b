using System.Data.Common;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Api.Tests;

/// <summary>An empty store of either kind for services that run as processes, and a look into it from beside them.</summary>
internal sealed class StoreOfKind : IDisposable
{
    private readonly DirectoryInfo? _folder;
    private readonly string _connectionString;

    /// <param name="kind">sqlite or postgresql.</param>
    public StoreOfKind(string kind)
    {
        if (kind == "sqlite")
        {
            _folder = Directory.CreateTempSubdirectory("shared-");
            var file = Path.Combine(_folder.FullName, "shared.db");
            (_connectionString, Setting) = ($"Data Source={file};Pooling=False", $"--Store:Path={file}");
        }
        else
        {
            _connectionString = PrivatePostgreSql.NewDatabase();
            Setting = $"--Store:ConnectionString={_connectionString}";
        }
    }

    /// <summary>Names the store to a service.</summary>
    public string Setting { get; }

    public async Task Execute(string sql) => await Asked(sql, command => command.ExecuteNonQueryAsync());

    public Task<long> Count(string table) => Number($"SELECT COUNT(*) FROM {table}");

    /// <summary>The one number that a query gives.</summary>
    public async Task<long> Number(string sql) => Convert.ToInt64(await Asked(sql, command => command.ExecuteScalarAsync()), CultureInfo.InvariantCulture);

    public void Dispose() => _folder?.Delete(recursive: true);

    private async Task<T> Asked<T>(string sql, Func<DbCommand, Task<T>> ask)
    {
        await using DbConnection connection = _folder is not null ? new SqliteConnection(_connectionString) : new NpgsqlConnection(_connectionString);
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        return await ask(command);
    }
}
