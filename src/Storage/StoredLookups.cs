using System.Collections.Concurrent;
using Findings;
using Visits;

namespace Storage;

/// <summary>Looks up again what stood beside stored records when they were judged.</summary>
internal sealed class StoredLookups(ProfileStore profiles, Tenant tenant, CancellationToken cancel)
{
    private readonly ConcurrentDictionary<(string, int?), Task<ApplianceProfile?>> _found = new();

    /// <summary>What an answer's context names; null where the profile is no longer stored.</summary>
    public async Task<Lookup?> OfAsync(EvaluationContext context)
    {
        if (context.ProfileId is not { } profileId)
            return Lookup.Of(context);

        var profile = await _found.GetOrAdd((profileId, context.ProfileVersion), key => profiles.FindAsync(tenant, key.Item1, key.Item2, cancel));
        return profile is null ? null : Lookup.Of(context, profile.Limits);
    }
}
