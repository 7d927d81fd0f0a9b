using Findings;
using Records;
using Records.Members;
using RuleModel.Figures;

namespace RuleModel;

/// <summary>
/// One visit as the rules see it: the record, the limits in force on its date, and the trade's words for what the record says. The
/// one fact of the first pass. Yes/no words are null where the record does not say.
/// </summary>
public sealed partial class Visit
{
    /// <summary>Makes the visit of <paramref name="record"/>.</summary>
    /// <param name="record">The record as posted.</param>
    /// <param name="limits">Every limit.</param>
    /// <param name="lookup">What was looked up beside it.</param>
    /// <param name="asOf">Whose law; default the date written in <c>finishedAt</c>.</param>
    /// <param name="lookedAtOn">From which day deadlines are seen; default <paramref name="asOf"/>.</param>
    public Visit(ServiceRecord record, LimitBook limits, Lookup? lookup = null, DateOnly? asOf = null, DateOnly? lookedAtOn = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(limits);
        Record = record;
        Lookup = lookup ?? Lookup.None;
        Date = record.FinishedAt.Date;
        AsOf = asOf ?? Date;
        LookedAtOn = lookedAtOn ?? AsOf;
        Maker = Lookup.Fill(record.MakerLimits);
        Limits = limits.For(record.Appliance.Fuel, record.Jurisdiction, AsOf);
        Judgements = new Judgements(this);
        StatesAccuracy = record.Instruments?.Any(instrument => instrument.Accuracies is { Count: > 0 }) == true;
    }

    /// <summary>The record as posted.</summary>
    public ServiceRecord Record { get; }

    /// <summary>What was looked up beside it.</summary>
    public Lookup Lookup { get; }

    /// <summary>The date written in <c>finishedAt</c>, at its own offset.</summary>
    public DateOnly Date { get; }

    /// <summary>Whose law.</summary>
    public DateOnly AsOf { get; }

    /// <summary>From which day deadlines are seen.</summary>
    public DateOnly LookedAtOn { get; }

    /// <summary>The maker's limits: the record's own, filled up from the stored profile. Where each stands: <see cref="MakersSourceOf"/>.</summary>
    public MakerLimits Maker { get; }

    /// <summary>The limits in force.</summary>
    public LimitSheet Limits { get; }

    /// <summary>What the rules said so far.</summary>
    public Judgements Judgements { get; }

    /// <summary>Every number worked out from the record, once.</summary>
    public IReadOnlyList<Figure> Figures => field ??= Limits.Unwatched(() => FigureSheet.Of(this));

    /// <summary>Does an instrument of the record state an accuracy? Without one nothing has an uncertainty.</summary>
    internal bool StatesAccuracy { get; }

    /// <summary>A standard uncertainty with the guard in force; null where there is none.</summary>
    internal Doubt? DoubtOf(double? standardUncertainty) =>
        standardUncertainty > 0 ? new Doubt(standardUncertainty.Value, Limits[Doubt.GuardLimit]) : null;

    /// <summary>True when the record does not carry the member at <paramref name="pointer"/>.</summary>
    public bool Lacks(string pointer) => RecordValues.At(Record, pointer) is null;
}
