using System.Text.Json.Nodes;

namespace MadeVisits;

/// <summary>What became of a danger.</summary>
public enum DangerState
{
    /// <summary>Nothing, or not enough: whoever lights that boiler is in danger.</summary>
    Standing,

    /// <summary>Left because the user would have nothing done about it.</summary>
    LeftByRefusal,

    /// <summary>Isolated where it is.</summary>
    TakenOutOfUse,

    /// <summary>Put right, and looked at or measured again.</summary>
    PutRight,
}

/// <summary>Words by which a record says something else than what is so.</summary>
public enum Lie
{
    /// <summary>The bad value and its defect are not written; the boiler was left in use.</summary>
    LeftOut,

    /// <summary>Every value is last year's, examined or not.</summary>
    CopiedFromLastYear,

    /// <summary>The bad value was sent, and then replaced by a good one without a word and without a later time.</summary>
    WithdrawnSilently,

    /// <summary>The same, called mistyped.</summary>
    WithdrawnAsMistyped,

    /// <summary>No access, by somebody who had been in.</summary>
    NoAccess,

    /// <summary>Nothing touched, by somebody who had opened it.</summary>
    NothingTouched,

    /// <summary>Turned off by the customer's wish; it was left in use.</summary>
    TurnedOff,

    /// <summary>The bad value is a thing that could not be done.</summary>
    Reason,

    /// <summary>The part that was fitted is of some other kind.</summary>
    PartOfOtherKind,

    /// <summary>The danger is written and classed as a thing of no weight.</summary>
    ClassedLower,

    /// <summary>The danger is written as that of some other appliance.</summary>
    OfAnotherAppliance,
}

/// <summary>One danger, as it is.</summary>
/// <param name="Kind">Which.</param>
/// <param name="IsSeen">Whether the engineer found it.</param>
/// <param name="State">What became of it.</param>
/// <param name="IsHandled">Whether everything that it owed was done and written down.</param>
public sealed record TrueDanger(DangerKind Kind, bool IsSeen, DangerState State, bool IsHandled)
{
    /// <summary>Topic of its defect.</summary>
    public string Topic => Danger.Of(Kind).Topic;

    /// <summary>Where a record shows it.</summary>
    public string Subject => Danger.Of(Kind).Subject;
}

/// <summary>What is so, whatever the record says.</summary>
public sealed record Truth
{
    public required IReadOnlyList<TrueDanger> Dangers { get; init; }

    /// <summary>What was really examined.</summary>
    public required IReadOnlySet<Aspect> Examined { get; init; }

    /// <summary>What of it is in the record.</summary>
    public required IReadOnlySet<Aspect> Written { get; init; }

    /// <summary>The dangers that a value or a defect of the record shows.</summary>
    public required IReadOnlySet<DangerKind> Shown { get; init; }

    /// <summary>Null for a truthful record.</summary>
    public Lie? Lie { get; init; }

    /// <summary>Whether a danger is there that was not put right.</summary>
    public bool IsDangerous => Dangers.Any(danger => danger.State != DangerState.PutRight);

    /// <summary>Whether a danger is there that nobody dealt with: no job may be closed on it by an engine that could know.</summary>
    public bool HasUnhandledDanger => Dangers.Any(danger => !danger.IsHandled);

    /// <summary>Whether one of those can be seen in the record: on it no engine may close.</summary>
    public bool ShowsUnhandledDanger => Dangers.Any(danger => !danger.IsHandled && Shown.Contains(danger.Kind));
}

/// <summary>A record with what is true of it.</summary>
public sealed record Written(JsonObject Record, Truth Truth);

/// <summary>One visit.</summary>
/// <param name="Seed">The same seed, the same visit.</param>
/// <param name="World">Everything around it.</param>
/// <param name="Job">Job type, as records name it.</param>
/// <param name="Result">Result of the work, as records name it.</param>
/// <param name="AsFound">The true condition as found.</param>
/// <param name="AsLeft">The true condition as left.</param>
/// <param name="Truthful">The record that this engineer would write if nothing but the truth came into it.</param>
/// <param name="Untruthful">The records by which he might get rid of the job.</param>
public sealed record MadeVisit(int Seed, World World, string Job, string Result, Condition AsFound, Condition AsLeft, Written Truthful, IReadOnlyList<Written> Untruthful)
{
    /// <summary>The visits to this boiler before, the earliest first.</summary>
    public IReadOnlyList<MadeVisit> Earlier { get; init; } = [];

    /// <summary>The truthful record, and then the others.</summary>
    public IEnumerable<Written> Records => Untruthful.Prepend(Truthful);
}
