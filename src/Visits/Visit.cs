using System.Buffers;
using Findings;
using Kernel;
using Records;
using Records.Canonical;
using Records.Members;
using Wire;

namespace Visits;

/// <summary>
/// One visit as the rules see it: the record, the limits in force on its date, and the trade's words for what the record says. The
/// fact that the first pass joins with each rule. Yes/no words are null where the record does not say.
/// </summary>
public sealed partial class Visit : JudgedVisit
{
    private readonly Func<Visit, IReadOnlyList<Figure>> _figures;

    /// <summary>Makes the visit of <paramref name="record"/>.</summary>
    /// <param name="record">The record as posted.</param>
    /// <param name="limits">Every limit.</param>
    /// <param name="law">What figures and history need of the law.</param>
    /// <param name="figures">Works the figures out, when they are first asked for.</param>
    /// <param name="lookup">What was looked up beside it.</param>
    /// <param name="asOf">Whose law; default the date written in <c>finishedAt</c>.</param>
    /// <param name="lookedAtOn">From which day deadlines are seen; default <paramref name="asOf"/>.</param>
    /// <param name="detail">How much of what the rules see is kept.</param>
    internal Visit(
        ServiceRecord record, LimitBook limits, IVisitLaw law, Func<Visit, IReadOnlyList<Figure>> figures, Lookup? lookup = null, DateOnly? asOf = null, DateOnly? lookedAtOn = null,
        Detail detail = Detail.Everything)
        : base(
            asOf ?? record.FinishedAt.Date, lookedAtOn ?? asOf ?? record.FinishedAt.Date,
            limits.For(WireNames.Of(record.Appliance.Fuel), record.Jurisdiction, asOf ?? record.FinishedAt.Date), detail)
    {
        _figures = figures;
        Record = record;
        Law = law;
        Lookup = lookup ?? Lookup.None;
        Date = record.FinishedAt.Date;
        Maker = Lookup.Fill(record.MakerLimits);
        StatesAccuracy = record.Instruments?.Any(instrument => instrument.Accuracies is { Count: > 0 }) == true;
    }

    /// <summary>The record as posted.</summary>
    public ServiceRecord Record { get; }

    /// <summary>What was looked up beside it.</summary>
    public Lookup Lookup { get; }

    /// <summary>The date written in <c>finishedAt</c>, at its own offset.</summary>
    public DateOnly Date { get; }

    /// <summary>What figures and history need of the law.</summary>
    public IVisitLaw Law { get; }

    /// <summary>The maker's limits: the record's own, filled up from the stored profile. Where each stands: <see cref="MakersSourceOf"/>.</summary>
    public MakerLimits Maker { get; }

    /// <summary>Every number worked out from the record, once.</summary>
    public override IReadOnlyList<Figure> Figures => field ??= Limits.Unwatched(() => _figures(this));

    /// <inheritdoc />
    public override IRecordModel Model => RecordModel.Instance;

    /// <inheritdoc />
    public override string RecordId => Record.RecordId;

    /// <inheritdoc />
    public override EvaluationContext Context => Lookup.ToContext();

    /// <inheritdoc />
    public override IReadOnlyList<object> InferenceFacts => SaidBefore.Count == 0 ? RecordedDefects : [.. RecordedDefects, .. SaidBefore];

    /// <summary>Does an instrument of the record state an accuracy? Without one nothing has an uncertainty.</summary>
    internal bool StatesAccuracy { get; }

    /// <summary>A standard uncertainty with the guard in force; null where there is none.</summary>
    internal Doubt? DoubtOf(double? standardUncertainty) =>
        standardUncertainty > 0 ? new Doubt(standardUncertainty.Value, Limits[Law.ConformityGuard]) : null;

    /// <summary>A look that keeps all it sees, for rules that are given none.</summary>
    /// <param name="subject">JSON Pointer of the subject.</param>
    public static Look LookAt(string subject) => new(subject, RecordModel.Instance);

    /// <inheritdoc />
    public override void WriteRecord(IBufferWriter<byte> output) => CanonicalForm.Write(Record, output);

    /// <inheritdoc />
    public override bool Lacks(string pointer) => RecordValues.At(Record, pointer) is null;
}
