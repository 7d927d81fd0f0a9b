using System.Data.Common;
using System.Security.Cryptography;
using System.Text.Json;
using Checking;
using Dapper;
using Findings;
using Records;
using Records.Canonical;
using Records.Many;
using Records.Reading;
using Storage;

namespace Jobs.Queue;

/// <summary>
/// Which records of an audit replace others of it. A record that names an evaluation in <c>supersedes</c> replaces the record that was
/// judged there, and whatever that one had replaced. Where such a record is in the same audit, it is judged and shown as every other,
/// but not counted. Two records are the same when their canonical forms are: what only resembles a replaced record is counted.
/// </summary>
public sealed class Corrections(Database database)
{
    private const string SelectJudged = """
        SELECT e.record AS Record, e.evaluation AS Evaluation, e.supersedes AS Supersedes, s.record AS Successor
        FROM evaluations e LEFT JOIN evaluations s ON s.tenant = e.tenant AND s.evaluation_id = e.superseded_by
        WHERE e.tenant = @tenant AND e.evaluation_id = @evaluationId
        """;

    private const string SelectAny = "SELECT COUNT(*) FROM (SELECT 1 AS one FROM audit_corrections WHERE tenant = @tenant AND audit_id = @auditId LIMIT 1) any_of_it";

    private const string SelectLines = """
        SELECT replaced_hash AS Hash, line AS Line FROM audit_corrections WHERE tenant = @tenant AND audit_id = @auditId AND replaced_hash IN ({0})
        """;

    private static readonly string[] Columns = ["tenant", "audit_id", "replaced_hash", "line"];

    /// <summary>What <paramref name="line"/> replaces; nothing when it corrects nothing that this store knows.</summary>
    public async Task<IReadOnlyList<Replacement>> OfAsync(Tenant tenant, RecordLine line, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(line);
        var replaced = new List<Replacement>();

        // Few records correct others; the search spares the rest a second reading. A name may be written with escapes.
        var by = line.Utf8.Span.IndexOf("supersedes"u8) >= 0 || line.Utf8.Span.IndexOf("\\u"u8) >= 0 ? line.Read().Record : null;
        var next = by?.Supersedes;
        while (next is { } evaluationId)
        {
            var command = new CommandDefinition(SelectJudged, new { tenant = tenant.Name, evaluationId }, cancellationToken: cancel);
            var judged = await database.ReadAsync(connection => connection.QuerySingleOrDefaultAsync<Judged>(command), cancel);
            if (judged is null || RecordReader.Read(judged.Record).Record is not { } record || !Replaces(by!, record, judged))
                break;
            replaced.Add(new Replacement(HashOf(record), line.Number));
            (by, next) = (record, judged.Supersedes);
        }

        return replaced;
    }

    /// <summary>Keeps what records of a stored audit replace.</summary>
    internal static Task SaveAsync(DbTransaction transaction, Tenant tenant, string auditId, IEnumerable<Replacement> replaced, CancellationToken cancel) =>
        transaction.InsertAsync("audit_corrections", Columns, replaced.Select(one => new object?[] { tenant.Name, auditId, one.Hash, one.Line }), cancel);

    /// <summary>The judged records of a chunk, with the mark of those that another record of the audit replaces.</summary>
    internal async Task<IReadOnlyList<JudgedLine>> MarkAsync(Chunk chunk, IReadOnlyList<JudgedLine> judged, CancellationToken cancel)
    {
        var audit = new { tenant = chunk.Tenant.Name, auditId = chunk.AuditId };
        if (await database.ReadAsync(connection => connection.ExecuteScalarAsync<long>(new CommandDefinition(SelectAny, audit, cancellationToken: cancel)), cancel) == 0)
            return judged;

        var hashes = judged.Select(line => line.Record).OfType<ServiceRecord>().Select(HashOf).ToList();
        var asked = new DynamicParameters(audit);
        foreach (var (index, hash) in hashes.Index())
            asked.Add($"h{index}", hash);
        var sql = SelectLines.Replace("{0}", string.Join(", ", hashes.Select((_, index) => $"@h{index}")), StringComparison.Ordinal);
        var command = new CommandDefinition(sql, asked, cancellationToken: cancel);
        var replaced = hashes.Count == 0 ? [] : await database.ReadAsync(connection => connection.QueryAsync<Replacement>(command), cancel);
        var lines = LinesOf(replaced);
        return [.. judged.Select(line => Mark(line, lines))];
    }

    /// <summary>The lines of the replacing records, by what they replace.</summary>
    public static ILookup<string, long> LinesOf(IEnumerable<Replacement> replaced) => replaced.ToLookup(one => one.Hash, one => one.Line, StringComparer.Ordinal);

    /// <summary>The judged record, with the mark of the last record that replaces it, if any does.</summary>
    public static JudgedLine Mark(JudgedLine judged, ILookup<string, long> lines)
    {
        ArgumentNullException.ThrowIfNull(judged);
        ArgumentNullException.ThrowIfNull(lines);
        if (lines.Count == 0 || judged.Record is null)
            return judged;
        var by = lines[HashOf(judged.Record)].Where(line => line != judged.Line.Line).DefaultIfEmpty().Max();
        return by == 0 ? judged : judged with { Line = judged.Line with { SupersededBy = by } };
    }

    /// <summary>
    /// The guard of <see cref="RecordCheck"/>, before anything is judged: where something could get better, only a stated reason replaces,
    /// or that this is how it was filed. What is in doubt is counted twice rather than not at all.
    /// </summary>
    private static bool Replaces(ServiceRecord by, ServiceRecord record, Judged judged)
    {
        var said = JsonSerializer.Deserialize(Packed.Open(judged.Evaluation), EvaluationJson.Wire.Evaluation)!;
        var superseding = new Superseding(by, record, said);
        var isFiled = judged.Successor is { } successor && RecordReader.Read(successor).Record is { } filed && HashOf(filed) == HashOf(by);
        return !superseding.Faults().Any() && !superseding.StillStands && (isFiled || by.SupersedesBecause is not null || !superseding.CanGetBetter);
    }

    private static string HashOf(ServiceRecord record) => Convert.ToHexStringLower(SHA256.HashData(CanonicalForm.Write(record)));

    private sealed class Judged
    {
        public required byte[] Record { get; init; }

        public required byte[] Evaluation { get; init; }

        public byte[]? Successor { get; init; }

        public string? Supersedes { get; init; }
    }
}

/// <summary>A record that is replaced, and by which.</summary>
/// <param name="Hash">SHA-256 of the canonical form of the replaced record, lower-case hex.</param>
/// <param name="Line">Line of the record that replaces it.</param>
public sealed record Replacement(string Hash, long Line);
