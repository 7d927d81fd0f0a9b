using Findings;
using Kernel;
using Records;

namespace Visits;

/// <content>What the maker allows here, and what stands beside it.</content>
public sealed partial class Visit
{
    /// <summary>Where a maker's value stands: the record's source for what the record states, the profile's for what the profile does. Neither vouches for the other's.</summary>
    public string? MakersSourceOf(Func<MakerLimits, decimal?> value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var (own, stored) = (Record.MakerLimits, Lookup.ProfileLimits);
        var isOwn = own is not null && value(own) is { } stated && stated == value(Maker);
        if (isOwn && !string.IsNullOrWhiteSpace(own!.Source))
            return own.Source;

        return stored is not null && value(stored) is { } known && known == value(Maker) ? stored.Source : null;
    }

    /// <summary>The maker's own largest value where it counts, else the default; no maker's value lifts the ceiling.</summary>
    public Limit MakersMax(Func<MakerLimits, decimal?> value, string defaultId, string? ceilingId = null)
    {
        ArgumentNullException.ThrowIfNull(value);
        return Limits.MakerMax(value(Maker), MakersSourceOf(value), defaultId, ceilingId);
    }

    /// <summary>The stricter of default and stored profile: what is allowed beyond it rests on the record's own source alone, and is an advisory.</summary>
    public Limit UsualMax(Func<MakerLimits, decimal?> value, string defaultId)
    {
        ArgumentNullException.ThrowIfNull(value);
        var standard = Limits[defaultId];
        return Lookup.ProfileLimits is { } stored && value(stored) is { } most && most < standard.Max
            ? LimitSheet.Maker(null, most, standard.Unit, stored.Source)
            : standard;
    }
}
