using System.CommandLine;
using Audits;

namespace ComplianceApi;

/// <summary>Which store a command is about.</summary>
internal static class StoreOptions
{
    public static Option<string> Path { get; } = new("--path") { Description = "The SQLite file.", DefaultValueFactory = _ => "data/compliance.db", Recursive = true };

    public static Option<string?> Connection { get; } = new("--connection") { Description = "Instead of a file: the connection string of PostgreSQL.", Recursive = true };

    /// <summary>Opens the store for as long as it is used; gives the exit code.</summary>
    public static async Task<int> WithStoreAsync(ParseResult parsed, Func<Database, Task<int>> use)
    {
        try
        {
            using var database = parsed.GetValue(Connection) is { } connection ? Database.OpenPostgreSql(connection) : Database.Open(parsed.GetRequiredValue(Path));
            return await use(database);
        }
        catch (Exception fault) when (fault is StoreException or NotSupportedException or System.Data.Common.DbException)
        {
            await parsed.InvocationConfiguration.Error.WriteLineAsync(fault.Message);
            return 1;
        }
    }
}
