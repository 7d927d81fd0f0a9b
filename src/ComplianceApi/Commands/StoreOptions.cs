using System.CommandLine;
using ComplianceApi.Configuration;
using Storage;

namespace ComplianceApi.Commands;

/// <summary>Which store a command is about.</summary>
internal static class StoreOptions
{
    public static Option<string> Path { get; } = new("--path") { Description = "The SQLite file.", DefaultValueFactory = _ => StorePlace.Usual, Recursive = true };

    public static Option<string?> Connection { get; } = new("--connection") { Description = "Instead of a file: the connection string of PostgreSQL.", Recursive = true };

    /// <summary>Opens the store for a command that changes nothing in it; gives the exit code.</summary>
    public static Task<int> ReadStoreAsync(ParseResult parsed, Func<Database, Task<int>> use) => WithStoreAsync(parsed, StoreOpening.ToRead, use);

    /// <summary>Opens the store for as long as it is used; gives the exit code.</summary>
    public static Task<int> WithStoreAsync(ParseResult parsed, StoreOpening opening, Func<Database, Task<int>> use) => SayFaultsAsync(parsed, async () =>
    {
        using var database = parsed.GetValue(Connection) is { } connection ? Database.OpenPostgreSql(connection, opening) : Database.Open(parsed.GetRequiredValue(Path), opening);
        return await use(database);
    });

    /// <summary>Says in one line what keeps a command from its work.</summary>
    public static async Task<int> SayFaultsAsync(ParseResult parsed, Func<Task<int>> work)
    {
        try
        {
            return await work();
        }
        catch (Exception fault) when (fault is StoreException or NotSupportedException or System.Data.Common.DbException or IOException or UnauthorizedAccessException)
        {
            await parsed.InvocationConfiguration.Error.WriteLineAsync(fault.Message);
            return 1;
        }
    }
}
