using System.Buffers;
using Findings;

namespace Kernel;

/// <summary>One visit as the kernel sees it: by whose law it is judged, which limits are in force for it, and what the rules said so far.</summary>
public abstract class JudgedVisit
{
    /// <summary>Makes the kernel's part of a visit.</summary>
    /// <param name="asOf">Whose law.</param>
    /// <param name="lookedAtOn">From which day deadlines are seen.</param>
    /// <param name="limits">The limits in force.</param>
    /// <param name="detail">How much of what the rules see is kept.</param>
    protected JudgedVisit(DateOnly asOf, DateOnly lookedAtOn, LimitSheet limits, Detail detail)
    {
        (AsOf, LookedAtOn, Limits, Detail) = (asOf, lookedAtOn, limits, detail);
        Judgements = new Judgements(this);
    }

    /// <summary>Whose law.</summary>
    public DateOnly AsOf { get; }

    /// <summary>From which day deadlines are seen.</summary>
    public DateOnly LookedAtOn { get; }

    /// <summary>The limits in force.</summary>
    public LimitSheet Limits { get; }

    /// <summary>How much of what the rules see is kept.</summary>
    public Detail Detail { get; }

    /// <summary>What the rules said so far.</summary>
    public Judgements Judgements { get; }

    /// <summary>What it owes.</summary>
    public OwedDuties Owed { get; } = new();

    /// <summary>The dangers that the rules of the situation found, in no order.</summary>
    public IList<Danger> Dangers { get; } = [];

    /// <summary>The parts of duties towards a danger that the rules of the situation found unmet.</summary>
    public ISet<string> OpenParts { get; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>How the appliance was left, as the record names it; null where it does not say.</summary>
    public abstract string? LeftAs { get; }

    /// <summary>The members that a record can have.</summary>
    public abstract IRecordModel Model { get; }

    /// <summary>The caller's own id of the record.</summary>
    public abstract string RecordId { get; }

    /// <summary>What was looked up beside the record, as answers show it.</summary>
    public abstract EvaluationContext Context { get; }

    /// <summary>Every number worked out from the record, once.</summary>
    public abstract IReadOnlyList<Figure> Figures { get; }

    /// <summary>What the inference matches beside visit and findings; empty where the record gives it no cause.</summary>
    public abstract IReadOnlyList<object> InferenceFacts { get; }

    /// <summary>What earlier visits put off until the appliance is used again and none between made up, each part once.</summary>
    public abstract IReadOnlyList<Deferral> DeferredBefore { get; }

    /// <summary>True when the record does not carry the member at <paramref name="pointer"/>.</summary>
    public abstract bool Lacks(string pointer);

    /// <summary>Does the record show that what <paramref name="finding"/> found was dealt with, so that it no longer keeps the job open?</summary>
    public abstract bool IsDealtWith(Finding finding);

    /// <summary>
    /// Why what is absent at <paramref name="pointer"/> was not done, where the record gives a reason that counts for a rule which serves
    /// <paramref name="parts"/>; null where it gives none.
    /// </summary>
    public abstract string? ReasonNotDone(string pointer, IReadOnlyList<ServesAttribute> parts, Silence silence);

    /// <summary>As what the job can be closed.</summary>
    public abstract string ClosesAs(IReadOnlyList<Duty> duties, OverallOutcome outcome);

    /// <summary>Writes the canonical bytes of the record.</summary>
    public abstract void WriteRecord(IBufferWriter<byte> output);
}
