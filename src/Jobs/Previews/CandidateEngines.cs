using System.Security.Cryptography;
using Kernel.Catalogues;
using Visits.Judging;

namespace Jobs.Previews;

/// <summary>The rules in force, and compiled beside them those of the last few candidates.</summary>
public sealed class CandidateEngines(ComplianceEngine inForce)
{
    private const int MostKept = 4;

    private readonly Lock _lock = new();
    private readonly List<(string Hash, ComplianceEngine Engine)> _kept = [];

    /// <summary>The rules in force.</summary>
    public ComplianceEngine InForce { get; } = inForce;

    /// <summary>The rules of a candidate.</summary>
    /// <exception cref="CatalogueException">Its limits do not fit; every fault is named.</exception>
    public ComplianceEngine Of(Candidate candidate)
    {
        ArgumentNullException.ThrowIfNull(candidate);
        if (candidate.OverrideBytes is not { } overrides)
            return InForce;

        var hash = Convert.ToHexStringLower(SHA256.HashData(overrides));
        lock (_lock)
        {
            var place = _kept.FindIndex(kept => kept.Hash == hash);
            var found = place >= 0 ? _kept[place] : (hash, ComplianceEngine.Start(InForce.Catalogue.WithOverrides(overrides)));
            if (place >= 0)
                _kept.RemoveAt(place);
            else if (_kept.Count == MostKept)
                _kept.RemoveAt(0);
            _kept.Add(found);
            return found.Item2;
        }
    }
}
