using System.Data.Common;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Dapper;
using Findings;
using Records;
using Visits.Facts;
using Wire;

namespace Storage;

/// <summary>A visit that is to be kept.</summary>
/// <param name="EvaluationId">The id of what was said of it.</param>
/// <param name="Record">Its record.</param>
/// <param name="Evaluation">What was said of it.</param>
/// <param name="Due">What falls due by it.</param>
internal sealed record ArrivingVisit(string EvaluationId, ServiceRecord Record, Evaluation Evaluation, IReadOnlyList<DueDate> Due)
{
    /// <summary>The audit that it came in; null: it was posted on its own.</summary>
    public string? AuditId { get; init; }

    /// <summary>Its line there.</summary>
    public long? Line { get; init; }

    /// <summary>What takes its place already; null: nothing does.</summary>
    public string? ReplacedBy { get; init; }
}

/// <summary>
/// Keeps the visits to appliances along with what was said of them. Of one visit (the same record id, appliance and day) what was said
/// last counts; of two records of one audit the later line, whichever was judged first.
/// </summary>
internal sealed class VisitRows
{
    private const string Replace = "UPDATE visits SET replaced_at = @knownAt, replaced_in_journal = 1 WHERE tenant = @tenant AND evaluation_id = @evaluationId AND replaced_at IS NULL";

    /// <summary>Removes what falls due by one visit.</summary>
    public const string DropDue = "DELETE FROM due_dates WHERE tenant = @tenant AND evaluation_id = @evaluationId";

    private const string Changed = "UPDATE visits SET changed = @change, replaced_by = @by WHERE tenant = @tenant AND evaluation_id = @evaluationId";

    private static readonly string[] Columns =
    [
        "tenant", "evaluation_id", "serial_number", "maker_key", "finished_at", "record_id", "known_at", "replaced_at", "replaced_by", "facts", "audit_id", "line", "in_journal", "replaced_in_journal",
        "changed", "outcome", "closing", "closes_as", "job_type", "engineer", "engineer_key", "premises", "premises_key", "started_at",
    ];

    private static readonly string[] DueColumns = ["tenant", "evaluation_id", "kind", "subject_key", "finished_at", "due_on", "detail"];

    private readonly string _tenant;
    private readonly string _knownAt;
    private readonly string? _keyId;
    private readonly List<Kept> _visits;

    /// <summary>Makes the rows, outside of any transaction.</summary>
    /// <param name="tenant">Whose.</param>
    /// <param name="visits">In the order in which they were said.</param>
    /// <param name="knownAt">Since when they are known.</param>
    /// <param name="law">What is a landlord's check.</param>
    /// <param name="keyId">The key with which they were written; null: none.</param>
    public VisitRows(Tenant tenant, IEnumerable<ArrivingVisit> visits, DateTimeOffset knownAt, IRecordLaw law, string? keyId)
    {
        _keyId = keyId;
        _tenant = tenant.Name;
        _knownAt = Database.TextOf(knownAt);
        _visits = [.. visits.Select(visit => new Kept(_tenant, visit, law))];
        foreach (var same in _visits.GroupBy(kept => (kept.SerialNumber, kept.MakerKey, kept.RecordId, kept.Day)).Select(same => same.ToList()))
        {
            foreach (var earlier in same.SkipLast(1))
                earlier.ReplacedBy ??= same[^1].EvaluationId;
        }
    }

    /// <summary>The rows of what falls due by one visit.</summary>
    public static IEnumerable<object?[]> DueRows(string tenant, string evaluationId, DateTimeOffset finishedAt, IEnumerable<DueDate> due) => due.Select(one => new object?[]
    {
        tenant, evaluationId, WireNames.Of(one.Kind), one.Key, Database.TextOf(finishedAt), one.IsSettled ? NoDay : Database.TextOf(one.By), JsonSerializer.Serialize(one, EvaluationJson.Wire.DueDate),
    });

    // Before every day, so that no list that begins at one holds the row; it still takes the place of earlier rows of its kind and subject.
    private const string NoDay = "";

    /// <summary>Writes rows of what falls due.</summary>
    public static Task InsertDueAsync(DbTransaction transaction, IEnumerable<object?[]> rows, CancellationToken cancel) => transaction.InsertAsync("due_dates", DueColumns, rows, cancel);

    /// <summary>Writes them, and tells the journal.</summary>
    public async Task WriteAsync(DbTransaction transaction, CancellationToken cancel)
    {
        if (_visits.Count == 0)
            return;

        await DatabaseKind.WriteAloneAsync(transaction, _tenant, cancel);
        var replaced = _visits.Where(kept => kept.Supersedes is not null).Select(kept => (EvaluationId: kept.Supersedes!, By: kept)).ToList();
        await foreach (var (same, evaluationId, line) in SameOnesAsync(transaction, cancel))
        {
            if (line > same.Line)
                same.ReplacedBy = evaluationId;
            else
                replaced.Add((evaluationId, same));
        }

        var superseded = new List<(string EvaluationId, Kept By)>();
        foreach (var one in replaced.DistinctBy(one => one.EvaluationId, StringComparer.Ordinal))
        {
            var asked = new { tenant = _tenant, evaluationId = one.EvaluationId, knownAt = _knownAt };
            var changed = await transaction.Connection!.ExecuteAsync(new CommandDefinition(Replace, asked, transaction, cancellationToken: cancel));
            await transaction.Connection!.ExecuteAsync(new CommandDefinition(DropDue, asked, transaction, cancellationToken: cancel));

            // A posted correction replaces once, though its visit may have lost its place before; an audit meets old corrections time and again.
            if (changed == 1 || (one.By.AuditId is null && one.By.Supersedes == one.EvaluationId))
                superseded.Add(one);
        }

        await TellJournalAsync(transaction, superseded, cancel);
        await transaction.InsertAsync("visits", Columns, _visits.Select(Row), cancel);

        // Of a subject that many of them are about, such as an engineer, the latest alone counts.
        var due = _visits.Where(kept => !kept.IsReplaced).SelectMany(kept => kept.DueRows).GroupBy(row => (row[2], row[3])).Select(same => same.MaxBy(row => ((string)row[4]!, (string)row[1]!), Comparer)!);
        await InsertDueAsync(transaction, due, cancel);
    }

    /// <summary>Of each visit what was said, then what it has superseded, then whether it was superseded on arrival; each change gets its number.</summary>
    private async Task TellJournalAsync(DbTransaction transaction, List<(string EvaluationId, Kept By)> superseded, CancellationToken cancel)
    {
        var earlier = superseded.ToLookup(one => one.By, one => one.EvaluationId);
        var entries = new List<NewEntry>(_visits.Count);
        var changes = new List<(string EvaluationId, Kept By, int Place)>();
        foreach (var kept in _visits)
        {
            entries.Add(Entry(JournalKind.Evaluation, kept.EvaluationId).Saying(kept.Evaluation));
            kept.Change = entries.Count - 1;
            foreach (var evaluationId in earlier[kept])
            {
                entries.Add(Entry(JournalKind.Supersession, evaluationId).Saying(kept.Evaluation));
                changes.Add((evaluationId, kept, entries.Count - 1));
            }

            if (!kept.IsReplaced)
                continue;
            entries.Add(Entry(JournalKind.Supersession, kept.EvaluationId));
            kept.Change = entries.Count - 1;
        }

        var first = await Journal.AppendAsync(transaction, _tenant, entries, cancel);
        foreach (var kept in _visits)
            kept.Change += first;
        foreach (var (evaluationId, by, place) in changes)
        {
            var asked = new { tenant = _tenant, evaluationId, by = by.EvaluationId, change = first + place };
            await transaction.Connection!.ExecuteAsync(new CommandDefinition(Changed, asked, transaction, cancellationToken: cancel));
        }

        NewEntry Entry(JournalKind kind, string evaluationId) => new(kind, evaluationId, _knownAt, _keyId);
    }

    private static Comparer<(string FinishedAt, string EvaluationId)> Comparer { get; } = Comparer<(string FinishedAt, string EvaluationId)>.Create((one, other) =>
        string.CompareOrdinal(one.FinishedAt, other.FinishedAt) is var order and not 0 ? order : string.CompareOrdinal(one.EvaluationId, other.EvaluationId));

    private object?[] Row(Kept kept) =>
    [
        _tenant, kept.EvaluationId, kept.SerialNumber, kept.MakerKey, kept.FinishedAt, kept.RecordId, _knownAt, kept.IsReplaced ? _knownAt : null, kept.ReplacedBy, kept.Facts, kept.AuditId, kept.Line, 1, kept.IsReplaced ? 1 : 0,
        kept.Change, kept.Listed.Outcome, kept.Listed.Closing, kept.Listed.ClosesAs, kept.Listed.JobType, kept.Listed.Engineer, kept.Listed.EngineerKey, kept.Listed.Premises, kept.Listed.PremisesKey, kept.Listed.StartedAt,
    ];

    /// <summary>The stored visits whose place is taken, with their lines where they came in the same audit. Written by hand, since it is asked for each chunk.</summary>
    private async IAsyncEnumerable<(Kept Kept, string EvaluationId, long? Line)> SameOnesAsync(DbTransaction transaction, [EnumeratorCancellation] CancellationToken cancel)
    {
        var arriving = _visits.Where(kept => !kept.IsReplaced).ToDictionary(kept => (kept.SerialNumber, kept.MakerKey, kept.RecordId, kept.Day));
        await using var command = transaction.Connection!.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = $"""
            SELECT evaluation_id, serial_number, maker_key, record_id, finished_at, audit_id, line FROM visits
            WHERE tenant = @tenant AND serial_number IN ({Named("s", kept => kept.SerialNumber)}) AND finished_at >= @first AND finished_at < @last
                AND record_id IN ({Named("r", kept => kept.RecordId)}) AND replaced_at IS NULL
            """;
        command.Add("tenant", _tenant);
        command.Add("first", Database.TextOf(_visits.Min(kept => kept.Day)));
        command.Add("last", Database.TextOf(_visits.Max(kept => kept.Day).AddDays(1)));
        await using var rows = await command.ExecuteReaderAsync(cancel);
        while (await rows.ReadAsync(cancel))
        {
            var day = Database.DayOf(rows.GetString(4)[..10]);
            if (arriving.TryGetValue((rows.GetString(1), rows.GetString(2), rows.GetString(3), day), out var kept))
                yield return (kept, rows.GetString(0), !rows.IsDBNull(5) && rows.GetString(5) == kept.AuditId ? rows.GetInt64(6) : null);
        }

        string Named(string prefix, Func<Kept, string> value) =>
            string.Join(", ", _visits.Select(value).Distinct(StringComparer.Ordinal).Select((text, place) => command.Add($"{prefix}{place}", text)));
    }

    /// <summary>The columns of one visit.</summary>
    private sealed class Kept(string tenant, ArrivingVisit visit, IRecordLaw law)
    {
        public string EvaluationId => visit.EvaluationId;

        public Evaluation Evaluation => visit.Evaluation;

        public string? Supersedes => visit.Evaluation.Supersedes?.StillStands == true ? null : visit.Record.Supersedes;

        public string? AuditId => visit.AuditId;

        public long? Line => visit.Line;

        public string RecordId => visit.Record.RecordId;

        public string SerialNumber { get; } = VisitKey.OfSerial(visit.Record.Appliance.SerialNumber);

        public string MakerKey { get; } = VisitKey.OfName(visit.Record.Appliance.Maker);

        public DateOnly Day { get; } = DateOnly.FromDateTime(visit.Record.FinishedAt.Value.UtcDateTime);

        public string FinishedAt { get; } = Database.TextOf(visit.Record.FinishedAt.Value);

        public byte[] Facts { get; } = FactsOf(visit.Record, visit.Evaluation, law);

        public List<object?[]> DueRows { get; } = [.. VisitRows.DueRows(tenant, visit.EvaluationId, visit.Record.FinishedAt.Value, visit.Due)];

        public string? ReplacedBy { get; set; } = visit.ReplacedBy;

        public bool IsReplaced => ReplacedBy is not null;

        public ListColumns Listed { get; } = ListColumns.Of(visit.Record, visit.Evaluation);

        /// <summary>The number of the journal's last entry about it.</summary>
        public long Change { get; set; }
    }

    /// <summary>What the rules over history will read, as it is stored.</summary>
    public static byte[] FactsOf(ServiceRecord record, Evaluation evaluation, IRecordLaw law) =>
        Packed.Of(JsonSerializer.SerializeToUtf8Bytes(VisitFacts.Of(record, evaluation, law), EvaluationJson.Wire.PastVisit));
}
