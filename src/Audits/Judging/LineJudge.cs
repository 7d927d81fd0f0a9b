using System.Collections.Concurrent;
using System.Data.Common;
using System.Text.Json;
using Findings;
using RuleEngine;
using ServiceRecords;

namespace Audits;

/// <summary>
/// Judges the records of one audit, as at its start: a profile or a visit saved later does not count, so that it does not matter when,
/// where and how often a record is judged.
/// </summary>
public sealed class LineJudge(ComplianceEngine engine, ProfileStore profiles, HistoryStore histories, Tenant tenant, DateTimeOffset startedAt)
{
    private readonly ConcurrentDictionary<string, Task<ApplianceProfile?>> _profiles = new(StringComparer.Ordinal);

    /// <summary>From which day deadlines are seen: the day (UTC) on which the audit started.</summary>
    public DateOnly LookedAtOn { get; } = DateOnly.FromDateTime(startedAt.UtcDateTime);

    /// <summary>The evaluation of each record, or why there is none, in their order. Their earlier visits are looked up in one query.</summary>
    /// <exception cref="DbException">The store does not answer: nothing is said of the records.</exception>
    public async Task<IReadOnlyList<JudgedLine>> JudgeAsync(IReadOnlyList<RecordLine> lines, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var reads = lines.Select(Read).ToList();
        var records = reads.Select(read => read.Record).OfType<ServiceRecord>().ToList();
        IReadOnlyList<IReadOnlyList<PastVisit>> found = records.Exists(VisitKey.IsAskedFor)
            ? await histories.FindAsync(tenant, records, startedAt, cancel)
            : [.. records.Select(_ => Array.Empty<PastVisit>())];
        using var earlier = found.GetEnumerator();
        var judged = new List<JudgedLine>(lines.Count);
        foreach (var (line, read) in lines.Zip(reads))
        {
            if (read is { Record: { } record } && earlier.MoveNext())
                judged.Add(await JudgeAsync(line, record, earlier.Current, cancel));
            else
                judged.Add(Rejected(line, read.Problem!));
        }

        return judged;
    }

    private async Task<JudgedLine> JudgeAsync(RecordLine line, ServiceRecord record, IReadOnlyList<PastVisit> earlier, CancellationToken cancel)
    {
        try
        {
            var profile = record.Appliance.ProfileId is { } id ? await FindProfileAsync(id, cancel) : null;
            if (profile is null && record.Appliance.ProfileId is not null)
                return Rejected(line, LineProblem.Of(FaultKind.Invalid, [UnknownProfile]));

            var beside = LookedUp.Beside(record, profile, earlier);
            var evaluation = engine.Evaluate(record, beside, lookedAtOn: LookedAtOn);
            return new JudgedLine(new AuditLine { Line = line.Number, RecordId = record.RecordId, Evaluation = evaluation }, record, line.Utf8) { Beside = beside };
        }
        catch (Exception fault) when (fault is not (DbException or OperationCanceledException))
        {
            return Rejected(line, Failed(fault));
        }
    }

    private static (ServiceRecord? Record, LineProblem? Problem) Read(RecordLine line)
    {
        try
        {
            var read = line.Read();
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

    private static Fault UnknownProfile { get; } = new("#/appliance/profileId", FaultCodes.UnknownReference, "There was no such appliance profile when the audit started.");

    private Task<ApplianceProfile?> FindProfileAsync(string profileId, CancellationToken cancel) =>
        _profiles.GetOrAdd(profileId, id => profiles.FindAsync(tenant, id, version: null, cancel, asAt: startedAt));

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
