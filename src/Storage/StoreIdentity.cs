using System.Data.Common;
using Dapper;

namespace Storage;

/// <summary>Which store it is.</summary>
/// <param name="Id">The same for as long as the store lives, and in every copy of it.</param>
/// <param name="Generation">1, and one more for each time that it was restored from a copy.</param>
public sealed record StoreIdentity(string Id, long Generation)
{
    private const string Select = "SELECT store_id AS Id, generation AS Generation FROM store_identity";

    private const string Insert = "INSERT INTO store_identity (store_id, generation) VALUES (@Id, @Generation)";

    private const string Renew = "UPDATE store_identity SET generation = @Generation WHERE store_id = @Id";

    internal static StoreIdentity? ReadFrom(DbConnection connection) => connection.QuerySingleOrDefault<StoreIdentity>(Select);

    internal static Task<StoreIdentity?> ReadFromAsync(DbConnection connection, CancellationToken cancel) =>
        connection.QuerySingleOrDefaultAsync<StoreIdentity>(new CommandDefinition(Select, cancellationToken: cancel));

    /// <summary>Reads it, and where there is none yet, gives the store one. A store that has one is not written to.</summary>
    internal static StoreIdentity ReadOrGive(DbConnection connection)
    {
        if (ReadFrom(connection) is { } known)
            return known;

        var given = new StoreIdentity(Guid.CreateVersion7(TimeProvider.System.GetUtcNow()).ToString(), 1);
        connection.Execute(Insert, given);
        return given;
    }

    /// <summary>Writes another generation of the same store.</summary>
    internal Task SaveAsync(DbTransaction transaction, CancellationToken cancel) =>
        transaction.Connection!.ExecuteAsync(new CommandDefinition(Renew, this, transaction, cancellationToken: cancel));
}
