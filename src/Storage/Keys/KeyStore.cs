using System.Globalization;
using Dapper;

namespace Storage.Keys;

/// <summary>The keys, and who has signed in with one.</summary>
public sealed class KeyStore(Database database)
{
    private const string Insert = """
        INSERT INTO api_keys (key_id, tenant, hash, scopes, note, created_at, expires_at)
        VALUES (@Id, @Tenant, @Hash, @Scopes, @Note, @CreatedAt, @ExpiresAt)
        """;

    private const string Select = """
        SELECT key_id AS Id, tenant AS Tenant, hash AS Hash, scopes AS Scopes, note AS Note, created_at AS CreatedAt, expires_at AS ExpiresAt, revoked_at AS RevokedAt
        FROM api_keys ORDER BY tenant, created_at, key_id
        """;

    private const string SetRevoked = "UPDATE api_keys SET revoked_at = @at WHERE key_id = @keyId AND revoked_at IS NULL";

    private const string InsertSession = "INSERT INTO page_sessions (hash, key_id, expires_at) VALUES (@hash, @keyId, @expiresAt)";

    private const string SelectSession = "SELECT key_id FROM page_sessions WHERE hash = @hash AND expires_at > @now";

    private const string DeleteSessions = "DELETE FROM page_sessions WHERE hash = @hash OR expires_at <= @now";

    /// <summary>Makes a key and gives it in full, the only time that it can be had.</summary>
    public async Task<string> AddAsync(Tenant tenant, IReadOnlyList<KeyScope> scopes, string note, DateTimeOffset now, DateTimeOffset? expiresAt, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(tenant);
        var key = KeyText.New();
        await ExecuteAsync(Insert, new Row
        {
            Id = KeyText.IdOf(key),
            Tenant = tenant.Name,
            Hash = KeyText.HashOf(key),
            Scopes = ApiKey.TextOf(scopes),
            Note = note,
            CreatedAt = Database.TextOf(now),
            ExpiresAt = expiresAt is { } end ? Database.TextOf(end) : null,
        }, cancel);
        return key;
    }

    /// <summary>Every key that was ever made.</summary>
    public async Task<IReadOnlyList<ApiKey>> ListAsync(CancellationToken cancel)
    {
        var rows = await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(Select, cancellationToken: cancel)), cancel);
        return [.. rows.Select(row => new ApiKey
        {
            Id = row.Id,
            Tenant = new Tenant(row.Tenant),
            Hash = row.Hash,
            Scopes = ApiKey.ScopesOf(row.Scopes),
            Note = row.Note,
            CreatedAt = MomentOf(row.CreatedAt) ?? DateTimeOffset.MinValue,
            ExpiresAt = MomentOf(row.ExpiresAt),
            RevokedAt = MomentOf(row.RevokedAt),
        })];
    }

    /// <summary>Takes a key out of use; false when there is none of this id, or it was taken out before.</summary>
    public Task<bool> RevokeAsync(string keyId, DateTimeOffset at, CancellationToken cancel) =>
        ExecuteAsync(SetRevoked, new { keyId, at = Database.TextOf(at) }, cancel);

    /// <summary>Notes that a browser has signed in with a key; gives the secret that the browser is to hold.</summary>
    public async Task<string> BeginSessionAsync(string keyId, DateTimeOffset expiresAt, CancellationToken cancel)
    {
        var secret = KeyText.NewSecret();
        await ExecuteAsync(InsertSession, new { hash = KeyText.HashOf(secret), keyId, expiresAt = Database.TextOf(expiresAt) }, cancel);
        return secret;
    }

    /// <summary>The id of the key with which a browser has signed in; null when it has not, or too long ago.</summary>
    public Task<string?> FindSessionAsync(string secret, DateTimeOffset now, CancellationToken cancel) => database.ReadAsync(
        connection => connection.QuerySingleOrDefaultAsync<string?>(
            new CommandDefinition(SelectSession, new { hash = KeyText.HashOf(secret), now = Database.TextOf(now) }, cancellationToken: cancel)), cancel);

    /// <summary>Ends a browser's session, and clears away those that have ended by themselves.</summary>
    public Task EndSessionAsync(string secret, DateTimeOffset now, CancellationToken cancel) => database.WriteAsync(
        async transaction => await transaction.Connection!.ExecuteAsync(
            new CommandDefinition(DeleteSessions, new { hash = KeyText.HashOf(secret), now = Database.TextOf(now) }, transaction, cancellationToken: cancel)) >= 0, cancel);

    /// <summary>What is there and cannot be read is long past: such a key has ended.</summary>
    private static DateTimeOffset? MomentOf(string? text) => text is null ? null
        : DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment) ? moment : DateTimeOffset.MinValue;

    private Task<bool> ExecuteAsync(string sql, object row, CancellationToken cancel) => database.WriteAsync(
        async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, row, transaction, cancellationToken: cancel)) == 1, cancel);

    private sealed class Row
    {
        public required string Id { get; init; }

        public required string Tenant { get; init; }

        public required string Hash { get; init; }

        public required string Scopes { get; init; }

        public required string Note { get; init; }

        public required string CreatedAt { get; init; }

        public string? ExpiresAt { get; init; }

        public string? RevokedAt { get; init; }
    }
}
