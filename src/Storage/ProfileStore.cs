using System.Text.Json;
using Dapper;
using Records;

namespace Storage;

/// <summary>Makers' limits that the deployer keeps. A version, once saved, never changes, for evaluations name it.</summary>
public sealed class ProfileStore(Database database)
{
    private const string Insert = """
        INSERT INTO appliance_profiles (tenant, profile_id, version, limits, saved_at, in_journal)
        SELECT @tenant, @profileId, COALESCE(MAX(version), 0) + 1, @limits, @savedAt, 1
        FROM appliance_profiles WHERE tenant = @tenant AND profile_id = @profileId
        HAVING @after IS NULL OR COALESCE(MAX(version), 0) = @after
        RETURNING version
        """;

    private const string Select = """
        SELECT version AS Version, limits AS Limits, saved_at AS SavedAt
        FROM appliance_profiles
        WHERE tenant = @tenant AND profile_id = @profileId AND (@version IS NULL OR version = @version) AND (@asAt IS NULL OR saved_at <= @asAt)
        ORDER BY version DESC LIMIT 1
        """;

    /// <summary>Saves <paramref name="limits"/> as the next version; null, and nothing is saved, where it would not follow <paramref name="after"/>.</summary>
    /// <param name="tenant">Whose.</param>
    /// <param name="profileId">Its id.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="savedAt">When.</param>
    /// <param name="cancel">Gives up.</param>
    /// <param name="after">The version that the caller has seen, 0 for none; null: whatever it is.</param>
    /// <param name="keyId">Id of the key with which it was sent; null: none was asked for.</param>
    public async Task<ApplianceProfile?> SaveAsync(
        Tenant tenant, string profileId, MakerLimits limits, DateTimeOffset savedAt, CancellationToken cancel, int? after = null, string? keyId = null)
    {
        var row = new
        {
            tenant = tenant.Name,
            profileId,
            limits = JsonSerializer.Serialize(limits, ProfileJson.Default.MakerLimits),
            savedAt = Database.TextOf(savedAt),
            after,
        };
        int? version = null;
        await database.WriteAgainAsync(
            async transaction =>
            {
                await DatabaseKind.WriteAloneAsync(transaction, tenant.Name, cancel);
                version = await transaction.Connection!.ExecuteScalarAsync<int?>(new CommandDefinition(Insert, row, transaction, cancellationToken: cancel));
                if (version is { } next)
                    await Journal.AppendAsync(transaction, tenant.Name, [NewEntry.OfProfile(profileId, next, row.limits, row.savedAt, keyId)], cancel);
                return true;
            },
            cancel);
        return version is { } saved ? new ApplianceProfile { ProfileId = profileId, Version = saved, SavedAt = savedAt, Limits = limits } : null;
    }

    /// <summary>A version of a profile, the latest by default; null when this tenant has none.</summary>
    /// <param name="tenant">Whose.</param>
    /// <param name="profileId">Its id.</param>
    /// <param name="version">Which version; null: the latest.</param>
    /// <param name="cancel">Gives up.</param>
    /// <param name="asAt">Only what had been saved by then.</param>
    public async Task<ApplianceProfile?> FindAsync(
        Tenant tenant, string profileId, int? version, CancellationToken cancel, DateTimeOffset? asAt = null)
    {
        var asked = new { tenant = tenant.Name, profileId, version, asAt = asAt is { } moment ? Database.TextOf(moment) : null };
        var command = new CommandDefinition(Select, asked, cancellationToken: cancel);
        var row = await database.ReadAsync(connection => connection.QuerySingleOrDefaultAsync<Row>(command), cancel);
        return row is null
            ? null
            : new ApplianceProfile
            {
                ProfileId = profileId,
                Version = row.Version,
                SavedAt = Database.MomentOf(row.SavedAt),
                Limits = JsonSerializer.Deserialize(row.Limits, ProfileJson.Default.MakerLimits)!,
            };
    }

    private sealed class Row
    {
        public required int Version { get; init; }

        public required string Limits { get; init; }

        public required string SavedAt { get; init; }
    }
}
