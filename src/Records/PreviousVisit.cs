using Records.Metadata;
using Records.Values;

namespace Records;

/// <summary>The visit before this one.</summary>
public sealed class PreviousVisit
{
    /// <summary>Date on which the earlier check counts as made, where that differs from the day itself.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which date does the previous check count as made?", While.Paper)]
    public DateOnly? DeemedOn { get; init; }

    /// <summary>Whether the one-off alignment of a new appliance's first check was already used.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Was the one-off alignment of the check date used before?", While.Paper)]
    public bool? AlignmentUsed { get; init; }

    /// <summary>When it ended, RFC 3339 with offset.</summary>
    [Class(MemberClass.Time)]
    [Ask("When did the previous visit finish (date, time and offset)?", While.Paper)]
    public Timestamp? FinishedAt { get; init; }

    /// <summary>Its flue gas readings.</summary>
    [Items(100)]
    [Class(MemberClass.Evidence)]
    [Ask("What were the flue gas readings of the previous visit?", While.Paper)]
    public IReadOnlyList<CombustionReading>? Readings { get; init; }

    /// <summary>Its return temperature, degrees Celsius.</summary>
    [Quantity("Cel", -90, 400)]
    [Class(MemberClass.Evidence)]
    [Ask("What was the return temperature in degrees Celsius at the previous visit?", While.Paper)]
    public decimal? ReturnTemperatureC { get; init; }
}
