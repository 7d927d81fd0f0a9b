using System.Data.Common;
using Dapper;
using Storage;

namespace Jobs.Backfill;

/// <summary>
/// Makes entries of the journal for what an older version of the service has stored, in the order of its times. In the background and not
/// with the scripts: what judged stands in the packed answers, a large store starts at once, and what an instance of the older version
/// still writes beside this one is found as well. So entries of what is written meanwhile may stand before older ones.
/// </summary>
public sealed class UnjournaledEntries(Database database)
{
    private const string SelectTenant = """
        SELECT tenant FROM (SELECT tenant FROM visits WHERE in_journal = 0 LIMIT 1) said
        UNION ALL SELECT tenant FROM (SELECT tenant FROM visits WHERE replaced_at IS NOT NULL AND replaced_in_journal = 0 LIMIT 1) replaced
        UNION ALL SELECT tenant FROM (SELECT tenant FROM appliance_profiles WHERE in_journal = 0 LIMIT 1) saved
        """;

    // Each by an index of its own, so that a batch costs the same however much there is to do. An evaluation goes before its replacement.
    private const string Select = """
        SELECT At, Kind, Id, Version, Limits FROM (
            SELECT * FROM (
                SELECT known_at AS At, 0 AS Kind, evaluation_id AS Id, 0 AS Version, NULL AS Limits FROM visits
                WHERE tenant = @tenant AND in_journal = 0 ORDER BY known_at, evaluation_id LIMIT 100) said
            UNION ALL SELECT * FROM (
                SELECT replaced_at, 1, evaluation_id, 0, NULL FROM visits
                WHERE tenant = @tenant AND replaced_at IS NOT NULL AND replaced_in_journal = 0 ORDER BY replaced_at, evaluation_id LIMIT 100) replaced
            UNION ALL SELECT * FROM (
                SELECT saved_at, 2, profile_id, version, limits FROM appliance_profiles
                WHERE tenant = @tenant AND in_journal = 0 ORDER BY saved_at, profile_id, version LIMIT 100) saved) events
        ORDER BY At, Kind, Id, Version LIMIT 100
        """;

    private static readonly Dictionary<JournalKind, string> Marks = new()
    {
        [JournalKind.Evaluation] = "UPDATE visits SET in_journal = 1, changed = @Seq WHERE tenant = @tenant AND evaluation_id = @Id",
        [JournalKind.Supersession] = "UPDATE visits SET replaced_in_journal = 1, changed = @Seq WHERE tenant = @tenant AND evaluation_id = @Id",
        [JournalKind.Profile] = "UPDATE appliance_profiles SET in_journal = 1 WHERE tenant = @tenant AND profile_id = @Id AND version = @Version",
    };

    private readonly StoredVisits _stored = new(database);

    /// <summary>Does some; false when there are none.</summary>
    public async Task<bool> RunAsync(CancellationToken cancel)
    {
        var tenant = await database.ReadAsync(connection => connection.QueryFirstOrDefaultAsync<string>(new CommandDefinition(SelectTenant, cancellationToken: cancel)), cancel);
        return tenant is not null && await database.WriteAsync(transaction => AppendAsync(transaction, new Tenant(tenant), cancel), cancel);
    }

    /// <summary>All under the lock: of two instances that do so at once the second one finds what the first has left.</summary>
    private async Task<bool> AppendAsync(DbTransaction transaction, Tenant tenant, CancellationToken cancel)
    {
        await DatabaseKind.WriteAloneAsync(transaction, tenant.Name, cancel);
        var asked = new { tenant = tenant.Name };
        var events = (await transaction.Connection!.QueryAsync<Row>(new CommandDefinition(Select, asked, transaction, cancellationToken: cancel))).AsList();
        var stored = await _stored.FindAsync(tenant, events.Where(one => one.Kind == JournalKind.Evaluation).Select(one => one.Id), cancel);
        var first = await Journal.AppendAsync(transaction, tenant.Name, events.ConvertAll(one => EntryOf(one, stored)), cancel);
        foreach (var ofKind in events.Index().GroupBy(one => one.Item.Kind).OrderBy(kind => kind.Key))
        {
            var rows = ofKind.Select(one => new { asked.tenant, one.Item.Id, one.Item.Version, Seq = first + one.Index });
            await transaction.Connection!.ExecuteAsync(new CommandDefinition(Marks[ofKind.Key], rows, transaction, cancellationToken: cancel));
        }

        // True where another has done it: there may be more.
        return true;
    }

    private static NewEntry EntryOf(Row one, Dictionary<string, StoredVisit> stored) => one.Kind == JournalKind.Profile
        ? NewEntry.OfProfile(one.Id, one.Version, one.Limits!, one.At, keyId: null)
        : new NewEntry(one.Kind, one.Id, one.At, KeyId: null).Saying(one.Kind == JournalKind.Evaluation ? stored.GetValueOrDefault(one.Id)?.ReadEvaluation() : null);

    private sealed class Row
    {
        public required string At { get; init; }

        public required JournalKind Kind { get; init; }

        public required string Id { get; init; }

        public required int Version { get; init; }

        public string? Limits { get; init; }
    }
}
