using System.Data.Common;
using System.Security.Cryptography;
using Dapper;
using Wire;

namespace Storage;

/// <summary>
/// The one journal of each tenant: what was said and what changed it, numbered from 1 without a gap. A number is given in the transaction
/// that writes what the entry tells, under the lock for which all writers of the tenant wait until it ends. So numbers are in the order in
/// which they can be seen, and who has read up to one has missed none before it.
/// </summary>
public sealed class Journal(Database database)
{
    private const string Last = "SELECT COALESCE(MAX(seq), 0) FROM journal WHERE tenant = @tenant";

    private const string Select = """
        SELECT seq AS Seq, kind AS Kind, id AS Id, input_hash AS InputHash, result_hash AS ResultHash, law_hash AS LawHash, code_hash AS CodeHash,
            at AS At, key_id AS KeyId, salt AS Salt
        FROM journal WHERE tenant = @tenant AND seq > @after ORDER BY seq LIMIT @limit
        """;

    private const int SaltBytes = 16;

    private static readonly string[] Columns = ["tenant", "seq", "kind", "id", "input_hash", "result_hash", "law_hash", "code_hash", "at", "key_id", "salt"];

    private static readonly Dictionary<string, JournalKind> Kinds = Enum.GetValues<JournalKind>().ToDictionary(kind => WireNames.Of(kind), StringComparer.Ordinal);

    /// <summary>Entries in order of their numbers.</summary>
    /// <param name="tenant">Whose.</param>
    /// <param name="after">The number after which they begin; 0: from the first.</param>
    /// <param name="limit">At most so many.</param>
    /// <param name="cancel">Cancels the operation.</param>
    public async Task<IReadOnlyList<JournalEntry>> ReadAsync(Tenant tenant, long after, int limit, CancellationToken cancel)
    {
        var command = new CommandDefinition(Select, new { tenant = tenant.Name, after, limit }, cancellationToken: cancel);
        return [.. (await database.ReadAsync(connection => connection.QueryAsync<Row>(command), cancel)).Select(row => row.ToEntry())];
    }

    /// <summary>The number of the last entry; 0 where there is none.</summary>
    public Task<long> LastAsync(Tenant tenant, CancellationToken cancel) => database.ReadAsync(
        connection => connection.ExecuteScalarAsync<long>(new CommandDefinition(Last, new { tenant = tenant.Name }, cancellationToken: cancel)), cancel);

    /// <summary>Appends in a transaction; nobody else writes for this tenant until it ends. Gives the number of the first entry, after which the others follow.</summary>
    internal static async Task<long> AppendAsync(DbTransaction transaction, string tenant, IReadOnlyCollection<NewEntry> entries, CancellationToken cancel)
    {
        await DatabaseKind.WriteAloneAsync(transaction, tenant, cancel);
        var first = 1 + await transaction.Connection!.ExecuteScalarAsync<long>(new CommandDefinition(Last, new { tenant }, transaction, cancellationToken: cancel));
        await transaction.InsertAsync("journal", Columns, entries.Select((entry, place) => RowOf(tenant, first + place, entry)), cancel);
        return first;
    }

    private static object?[] RowOf(string tenant, long seq, NewEntry entry) =>
    [
        tenant, seq, WireNames.Of(entry.Kind), entry.Id, entry.InputHash, entry.ResultHash, entry.LawHash, entry.CodeHash, entry.At, entry.KeyId,
        RandomNumberGenerator.GetBytes(SaltBytes),
    ];

    private sealed class Row
    {
        public required long Seq { get; init; }

        public required string Kind { get; init; }

        public required string Id { get; init; }

        public string? InputHash { get; init; }

        public string? ResultHash { get; init; }

        public string? LawHash { get; init; }

        public string? CodeHash { get; init; }

        public required string At { get; init; }

        public string? KeyId { get; init; }

        public required byte[] Salt { get; init; }

        public JournalEntry ToEntry() => new()
        {
            Seq = Seq,
            Kind = Kinds[Kind],
            Id = Id,
            InputHash = InputHash,
            ResultHash = ResultHash,
            LawHash = LawHash,
            CodeHash = CodeHash,
            At = Database.MomentOf(At),
            KeyId = KeyId,
            Salt = Salt,
        };
    }
}
