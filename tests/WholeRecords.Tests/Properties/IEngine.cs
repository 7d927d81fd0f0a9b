using Findings;
using Records;
using Visits;

namespace WholeRecords.Tests.Properties;

/// <summary>Whatever judges a record: the rules of today, those of tomorrow, a second opinion, or an engine with a fault of its own. Safe from any thread.</summary>
internal interface IEngine
{
    /// <summary>What it says of a record, given what was looked up beside it.</summary>
    Answer Judge(ServiceRecord record, Lookup lookup);
}

/// <summary>What an engine says of a record. A part that it does not give is null, and then is not asked about.</summary>
internal sealed record Answer
{
    public required OverallOutcome Outcome { get; init; }

    public required bool MayClose { get; init; }

    /// <summary>visit, repair, check, service or installation; null where the job may not be closed, or the engine does not say as what.</summary>
    public string? ClosesAs { get; init; }

    /// <summary>What each rule says of each subject.</summary>
    public required IReadOnlyList<Row> Rows { get; init; }

    public required IReadOnlyList<Asked> Missing { get; init; }

    /// <summary>What the visit owes.</summary>
    public IReadOnlyList<Owed>? Duties { get; init; }

    public Situation? Situation { get; init; }

    /// <summary>The dangers that it names, each with the place at which it found it.</summary>
    public required IReadOnlySet<string> Dangers { get; init; }

    /// <summary>Whether a danger is what stands in the way of closing; null where the engine does not tell it from missing evidence.</summary>
    public bool? IsHeldByADanger { get; init; }

    /// <summary>Closes as the job itself, not merely as a visit; null where it closes and the engine does not say as what.</summary>
    public bool? ClosesAsTheJob => !MayClose ? false : ClosesAs is null ? null : ClosesAs != "visit";
}

/// <summary>One answer of one rule.</summary>
internal readonly record struct Row(string RuleId, string Subject, Outcome Outcome);

/// <summary>One question. The weight is must or should; null where the engine knows none, and every question then holds.</summary>
internal readonly record struct Asked(string Pointer, string? Weight);

/// <summary>One duty: state met, missing, bad, deferred, byReason or contradicted; null where it is left open, which a must never is.</summary>
internal readonly record struct Owed(string Kind, string Weight, string? State);

/// <summary>The worst state of a danger, whether every duty of every danger is met, and the kinds of those that are not.</summary>
internal sealed record Situation(string State, bool Handled, IReadOnlyList<string> Open);
