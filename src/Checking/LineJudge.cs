using System.Data.Common;
using System.Text.Json;
using Kernel;
using Records;
using Records.Faults;
using Records.Many;
using Records.Reading;
using Storage;
using Visits.Judging;

namespace Checking;

/// <summary>
/// Judges the records of one audit, as at its start: a profile or a visit saved later does not count, so that it does not matter when,
/// where and how often a record is judged.
/// </summary>
/// <param name="engine">The rules.</param>
/// <param name="profiles">Makers' limits.</param>
/// <param name="evaluations">What records may supersede.</param>
/// <param name="histories">Earlier visits.</param>
/// <param name="tenant">Whose records they are.</param>
/// <param name="startedAt">When the audit started.</param>
/// <param name="lookedIn">Which store that is, for the sentences of refusals.</param>
public sealed class LineJudge(
    ComplianceEngine engine, ProfileStore profiles, EvaluationStore evaluations, HistoryStore histories, Tenant tenant, DateTimeOffset startedAt, string lookedIn = "")
{
    /// <summary>How much of what the rules see is kept.</summary>
    public Detail Detail { get; init; } = Detail.Problems;

    /// <summary>From which day deadlines are seen: the day (UTC) on which the audit started.</summary>
    public DateOnly LookedAtOn { get; } = DateOnly.FromDateTime(startedAt.UtcDateTime);

    /// <summary>The cautions that every answer carries.</summary>
    public IReadOnlyList<string> Cautions => engine.Catalogue.Header.Cautions;

    private RecordCheck Check => field ??= new(engine, profiles, evaluations, tenant, startedAt) { IsAsAtReceipt = true, LookedIn = lookedIn, Detail = Detail };

    /// <summary>The evaluation of each record, or why there is none, in their order. Their earlier visits are looked up in one query.</summary>
    /// <exception cref="DbException">The store does not answer: nothing is said of the records.</exception>
    public async Task<IReadOnlyList<JudgedLine>> JudgeAsync(IReadOnlyList<RecordLine> lines, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var reads = lines.Select(Read).ToList();
        var records = reads.Select(read => read.Record).OfType<ServiceRecord>().ToList();
        var found = await histories.FindAsync(tenant, records, startedAt, cancel);
        using var before = found.GetEnumerator();
        var judged = new List<JudgedLine>(lines.Count);
        foreach (var (line, read) in lines.Zip(reads))
        {
            if (read is { Record: { } record } && before.MoveNext())
                judged.Add(await JudgeAsync(line, record, before.Current, cancel));
            else
                judged.Add(Rejected(line, read.Problem ?? LineProblem.Internal("The record was read, and nothing was looked up for it; nothing can be concluded about it.")));
        }

        return judged;
    }

    private async Task<JudgedLine> JudgeAsync(RecordLine line, ServiceRecord record, VisitsBefore before, CancellationToken cancel)
    {
        try
        {
            var said = await Check.CheckAsync(record, before, cancel, lookedAtOn: LookedAtOn);
            return said.Evaluation is { } evaluation
                ? new JudgedLine(new AuditLine { Line = line.Number, RecordId = record.RecordId, Evaluation = evaluation }, record, line.Utf8) { Beside = said.Beside }
                : Rejected(line, LineProblem.Of(FaultKind.Invalid, said.Faults));
        }
        catch (Exception fault) when (fault is not (DbException or OperationCanceledException))
        {
            return Rejected(line, Failed(fault));
        }
    }

    private (ServiceRecord? Record, LineProblem? Problem) Read(RecordLine line)
    {
        try
        {
            var read = line.Read(engine.Catalogue.JurisdictionCodes);
            return read.IsRecord ? (read.Record, null) : (null, LineProblem.Of(read.Kind.Value, read.Faults));
        }
        catch (Exception fault)
        {
            return (null, Failed(fault));
        }
    }

    private static LineProblem Failed(Exception fault) =>
        LineProblem.Internal($"The record could not be judged ({fault.GetType().Name}); nothing can be concluded about it.");

    /// <summary>A record that is not judged.</summary>
    public static JudgedLine Rejected(RecordLine line, LineProblem problem)
    {
        ArgumentNullException.ThrowIfNull(line);
        return new JudgedLine(new AuditLine { Line = line.Number, RecordId = RecordIdOf(line.Utf8), Problem = problem }, null, line.Utf8);
    }

    /// <summary>The id that a faulty record gives itself, so that its writer finds it; null when it cannot be told.</summary>
    private static string? RecordIdOf(ReadOnlyMemory<byte> utf8)
    {
        try
        {
            using var json = JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = RecordReader.MaxDepth, AllowDuplicateProperties = false });
            return json.RootElement.ValueKind == JsonValueKind.Object && json.RootElement.TryGetProperty("recordId", out var id)
                && id.ValueKind == JsonValueKind.String && id.GetString() is { Length: > 0 and <= 100 } text && !text.Any(char.IsControl) ? text : null;
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            return null;
        }
    }
}
