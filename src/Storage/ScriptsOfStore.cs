using System.Data.Common;
using System.Reflection;
using Dapper;

namespace Storage;

/// <summary>
/// Which scripts made the tables of a store. A newer version that upgrades it leaves one there that this program does not have, and may demand of
/// what is written something that this program knows nothing of. So every write looks for such a script, in its transaction, before it begins.
/// </summary>
internal static class ScriptsOfStore
{
    private const string Ending = ".sql";

    /// <summary>Gives a script of a newer version where there is one. The names are this program's own, so they may stand in SQL.</summary>
    public static string SelectNewer { get; } =
        $"SELECT scriptname FROM schemaversions WHERE scriptname NOT IN ({string.Join(", ", Names().Select(name => $"'{name}'"))}) LIMIT 1";

    /// <exception cref="StoreUpgradedException">A newer version has upgraded the store.</exception>
    public static async Task<bool> DemandKnownAsync(DbConnection connection, DbTransaction? transaction, CancellationToken cancel)
    {
        var newer = await connection.ExecuteScalarAsync<string?>(new CommandDefinition(SelectNewer, transaction: transaction, cancellationToken: cancel));
        return newer is null ? true : throw new StoreUpgradedException();
    }

    private static IEnumerable<string> Names() =>
        Assembly.GetExecutingAssembly().GetManifestResourceNames().Where(name => name.EndsWith(Ending, StringComparison.Ordinal));
}
