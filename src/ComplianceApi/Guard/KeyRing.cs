using Storage.Keys;

namespace ComplianceApi.Guard;

/// <summary>The keys that are in use, read again from the store when they were read more than a second ago.</summary>
public sealed class KeyRing(KeyStore store, TimeProvider clock)
{
    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(1);

    /// <summary>Compared with what is nobody's key, so that an unknown id takes as long as a wrong secret.</summary>
    private static readonly string Nobody = KeyText.HashOf(KeyText.New());

    private volatile Reading? _last;
    private volatile bool _hadKeys;

    /// <summary>Was a key ever made? From then on one is asked for, even if all of them should vanish from the store.</summary>
    public async Task<bool> HasKeysAsync(CancellationToken cancel)
    {
        if ((await ReadAsync(cancel)).Count > 0)
            _hadKeys = true;
        return _hadKeys;
    }

    /// <summary>Is there a key that opens something now?</summary>
    public async Task<bool> HasLiveKeyAsync(CancellationToken cancel) => (await ReadAsync(cancel)).Values.Any(IsLive);

    /// <summary>The key that a caller has shown; null when it is none, or not in use.</summary>
    public async Task<ApiKey?> FindAsync(string shown, CancellationToken cancel) => await FindAnyAsync(shown, cancel) is { } key && IsLive(key) ? key : null;

    /// <summary>The same, in use or not: that it has ended is told to none but who holds all of it.</summary>
    public async Task<ApiKey?> FindAnyAsync(string shown, CancellationToken cancel)
    {
        var key = (await ReadAsync(cancel)).GetValueOrDefault(KeyText.IdOf(shown));
        return KeyText.Matches(shown, key?.Hash ?? Nobody) ? key : null;
    }

    /// <summary>The key of this id, where it is in use.</summary>
    public async Task<ApiKey?> FindByIdAsync(string keyId, CancellationToken cancel) =>
        (await ReadAsync(cancel)).GetValueOrDefault(keyId) is { } key && IsLive(key) ? key : null;

    /// <summary>Does it open anything now?</summary>
    public bool IsLive(ApiKey key) => key.Tenant.Name.Length > 0 && key.IsLiveAt(clock.GetUtcNow());

    private async Task<Dictionary<string, ApiKey>> ReadAsync(CancellationToken cancel)
    {
        if (_last is { } last && clock.GetElapsedTime(last.At) < Fresh)
            return last.Keys;

        var at = clock.GetTimestamp();
        var keys = (await store.ListAsync(cancel)).ToDictionary(key => key.Id, StringComparer.Ordinal);
        _last = new Reading(at, keys);
        return keys;
    }

    private sealed record Reading(long At, Dictionary<string, ApiKey> Keys);
}
