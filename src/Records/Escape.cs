using Records.Metadata;
using Records.Values;

namespace Records;

/// <summary>A gas escape, known or suspected; carbon monoxide from an appliance counts.</summary>
public sealed class Escape
{
    /// <summary>Whether an escape was reported or suspected.</summary>
    [Class(MemberClass.Volunteered)]
    [Ask("Was a gas escape reported or suspected?", While.OnSite)]
    public bool? Reported { get; init; }

    /// <summary>Whether the gas was shut off.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the gas shut off?", While.OnSite)]
    public bool? GasIsolated { get; init; }

    /// <summary>Where the gas was shut off.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Where was the gas shut off?", While.OnSite)]
    public IsolationPoint? IsolatedAt { get; init; }

    /// <summary>Reference given by the gas emergency provider or supplier.</summary>
    [Text(100)]
    [Class(MemberClass.Identity)]
    [Ask("Which reference did the gas emergency provider give?", While.Paper)]
    public string? Reference { get; init; }

    /// <summary>When it was reported, RFC 3339 with offset.</summary>
    [Class(MemberClass.Time)]
    [Ask("When was the escape reported (date, time and offset)?", While.OnSite)]
    public Timestamp? ReportedAt { get; init; }

    /// <summary>Who was told of it. An empty list: stated, nobody.</summary>
    [Items(20)]
    [Class(MemberClass.Evidence)]
    [Ask("Who was told of the escape?", While.OnSite)]
    public IReadOnlyList<ToldParty>? Told { get; init; }
}
