using Wire;

namespace Storage.Keys;

/// <summary>A key as it is kept: all of it but the secret.</summary>
public sealed class ApiKey
{
    /// <summary>Its public id, the part before the dot.</summary>
    public required string Id { get; init; }

    /// <summary>Whose data it opens.</summary>
    public required Tenant Tenant { get; init; }

    /// <summary>SHA-256 of the whole key, lower-case hex.</summary>
    public required string Hash { get; init; }

    /// <summary>What its holder may do.</summary>
    public required IReadOnlyList<KeyScope> Scopes { get; init; }

    /// <summary>What it is for, in the operator's words.</summary>
    public required string Note { get; init; }

    /// <summary>When it was made.</summary>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <summary>When it stops to open anything; null: it does not.</summary>
    public DateTimeOffset? ExpiresAt { get; init; }

    /// <summary>When it was revoked; null: it was not.</summary>
    public DateTimeOffset? RevokedAt { get; init; }

    /// <summary>Does it open anything at this moment?</summary>
    public bool IsLiveAt(DateTimeOffset now) => RevokedAt is null && (ExpiresAt is null || now < ExpiresAt);

    /// <summary>May its holder do this?</summary>
    public bool Allows(KeyScope scope) => Scopes.Contains(scope) || Scopes.Contains(KeyScope.Admin);

    /// <summary>The scopes as they are written. A name that is none gives nothing.</summary>
    internal static IReadOnlyList<KeyScope> ScopesOf(string text) =>
        [.. Enum.GetValues<KeyScope>().Where(scope => text.Split(' ').Contains(WireNames.Of(scope), StringComparer.Ordinal))];

    /// <summary>The same the other way round.</summary>
    internal static string TextOf(IEnumerable<KeyScope> scopes) => string.Join(' ', scopes.Select(scope => WireNames.Of(scope)));
}
