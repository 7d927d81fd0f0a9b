using Findings;

namespace Storage;

/// <summary>What an entry of the journal tells. Kept as text: a store may hold kinds that only later versions write.</summary>
public enum JournalKind
{
    /// <summary>A record was judged.</summary>
    Evaluation,

    /// <summary>An evaluation no longer counts: another took its place.</summary>
    Supersession,

    /// <summary>A version of a maker's profile was saved.</summary>
    Profile,

    /// <summary>Limits were overridden.</summary>
    Override,

    /// <summary>Somebody vouched for something.</summary>
    Attestation,

    /// <summary>Somebody decided.</summary>
    Decision,

    /// <summary>A draft was closed.</summary>
    DraftClosed,

    /// <summary>Two appliances turned out to be one.</summary>
    Merge,

    /// <summary>One appliance turned out to be two.</summary>
    Split,

    /// <summary>A person's data was erased.</summary>
    Erasure,

    /// <summary>A record was removed since it no longer had to be kept.</summary>
    Purge,
}

/// <summary>An entry of a tenant's journal.</summary>
public sealed record JournalEntry
{
    /// <summary>Its number: from 1, each one more than the last.</summary>
    public required long Seq { get; init; }

    /// <summary>What it tells.</summary>
    public required JournalKind Kind { get; init; }

    /// <summary>Of what: the id of an evaluation, or id and version of a profile with a dot between.</summary>
    public required string Id { get; init; }

    /// <summary>SHA-256 of what was judged or saved, lower-case hex; of a supersession that of the record which took the place, where it was judged then.</summary>
    public string? InputHash { get; init; }

    /// <summary>SHA-256 of what was said, lower-case hex; of a supersession what is said instead.</summary>
    public string? ResultHash { get; init; }

    /// <summary>SHA-256 of the law by which it was judged, lower-case hex.</summary>
    public string? LawHash { get; init; }

    /// <summary>SHA-256 of the code that judged, lower-case hex.</summary>
    public string? CodeHash { get; init; }

    /// <summary>When it happened (RFC 3339, UTC). Of what an older version stored this is earlier than of entries before it.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Id of the key with which it was written; null: none was asked for, or it was written from the command line or by an older version.</summary>
    public string? KeyId { get; init; }

    /// <summary>16 random bytes of its own.</summary>
    public required ReadOnlyMemory<byte> Salt { get; init; }
}

/// <summary>An entry that has no number yet.</summary>
/// <param name="Kind">What it tells.</param>
/// <param name="Id">Of what.</param>
/// <param name="At">When it happened, as stored.</param>
/// <param name="KeyId">Who wrote.</param>
internal sealed record NewEntry(JournalKind Kind, string Id, string At, string? KeyId)
{
    public string? InputHash { get; init; }

    public string? ResultHash { get; init; }

    public string? LawHash { get; init; }

    public string? CodeHash { get; init; }

    /// <summary>With the hashes of what was said.</summary>
    public NewEntry Saying(Evaluation? evaluation) => evaluation is null ? this : this with
    {
        InputHash = evaluation.InputHash,
        ResultHash = evaluation.ResultHash,
        LawHash = evaluation.RuleSet.LawHash,
        CodeHash = evaluation.RuleSet.CodeHash,
    };

    /// <summary>A version of a profile was saved.</summary>
    public static NewEntry OfProfile(string profileId, int version, string limits, string savedAt, string? keyId) =>
        new(JournalKind.Profile, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{profileId}.{version}"), savedAt, keyId) { InputHash = Hash(limits) };

    private static string Hash(string text) =>
        Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(text)));
}
