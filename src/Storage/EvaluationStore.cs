using System.Text.Json;
using Dapper;
using Findings;
using Records;
using Visits.Facts;
using Wire;

namespace Storage;

/// <summary>Evaluations as they were given, with the records they judge: those of single records, and what audits say of theirs.</summary>
public sealed class EvaluationStore(Database database, IRecordLaw law)
{
    private const string Insert = """
        INSERT INTO evaluations (tenant, evaluation_id, record_id, maker, serial_number, finished_at, evaluated_at, outcome, supersedes,
            input_hash, result_hash, rule_set_version, shown, record, evaluation, landlord, landlord_check)
        VALUES (@tenant, @evaluationId, @recordId, @maker, @serialNumber, @finishedAt, @evaluatedAt, @outcome, @supersedes,
            @inputHash, @resultHash, @ruleSetVersion, @shown, @record, @evaluation, @landlord, @landlordCheck)
        """;

    private const string Supersede = """
        UPDATE evaluations SET superseded_by = @evaluationId
        WHERE tenant = @tenant AND evaluation_id = @supersedes AND superseded_by IS NULL
        """;

    private const string Select = """
        SELECT evaluation AS Json, shown AS Shown, superseded_by AS SupersededBy
        FROM evaluations WHERE tenant = @tenant AND evaluation_id = @evaluationId
        """;

    private const string SelectRecord = "SELECT record FROM evaluations WHERE tenant = @tenant AND evaluation_id = @evaluationId";

    private const string OfAudit = """
        audit_lines l WHERE l.tenant = @tenant AND (l.audit_id, l.line) IN (
            SELECT v.audit_id, v.line FROM visits v WHERE v.tenant = @tenant AND v.evaluation_id = {0} AND v.audit_id IS NOT NULL)
        """;

    private static readonly string SelectOfAudit =
        $"SELECT l.answer AS Json, l.audit_id AS AuditId, l.superseded_by AS Line, l.corrected_by AS SupersededBy FROM {OfAudit.Replace("{0}", "@evaluationId", StringComparison.Ordinal)}";

    private static readonly string SelectRecordOfAudit = $"SELECT l.record FROM {OfAudit.Replace("{0}", "@evaluationId", StringComparison.Ordinal)}";

    private const string SupersedeOfAudit = """
        UPDATE audit_lines SET corrected_by = @evaluationId
        WHERE tenant = @tenant AND corrected_by IS NULL AND superseded_by IS NULL AND (audit_id, line) IN (
            SELECT v.audit_id, v.line FROM visits v WHERE v.tenant = @tenant AND v.evaluation_id = @supersedes AND v.audit_id IS NOT NULL)
        """;

    /// <summary>Stores an evaluation.</summary>
    /// <param name="tenant">Whose it is.</param>
    /// <param name="record">The record.</param>
    /// <param name="posted">The record's bytes as they were posted.</param>
    /// <param name="evaluation">The whole evaluation, with its id and time.</param>
    /// <param name="shown">How much of it was asked for.</param>
    /// <param name="cancel">Gives up.</param>
    /// <param name="due">What falls due by the record.</param>
    /// <param name="keyed">The caller's key, which is settled along with it; null: none was sent.</param>
    /// <param name="keyId">Id of the key with which it was posted; null: none was asked for.</param>
    /// <returns>False, and nothing is stored, when the evaluation that the record supersedes is not there or superseded already. One that still stands is left as it is.</returns>
    /// <exception cref="KeyLostException">The key was held for too long; nothing is stored.</exception>
    public Task<bool> SaveAsync(
        Tenant tenant, ServiceRecord record, ReadOnlyMemory<byte> posted, Evaluation evaluation, Include shown, CancellationToken cancel, IReadOnlyList<DueDate>? due = null, KeyedRequest? keyed = null,
        string? keyId = null)
    {
        var row = new
        {
            tenant = tenant.Name,
            evaluationId = evaluation.EvaluationId,
            recordId = record.RecordId,
            maker = record.Appliance.Maker,
            serialNumber = record.Appliance.SerialNumber,
            finishedAt = Database.TextOf(record.FinishedAt.Value),
            evaluatedAt = Database.TextOf(evaluation.EvaluatedAt!.Value),
            outcome = WireNames.Of(evaluation.Outcome),
            supersedes = record.Supersedes,
            inputHash = evaluation.InputHash,
            resultHash = evaluation.ResultHash,
            ruleSetVersion = evaluation.RuleSet.Version,
            shown = WireNames.Of(shown),
            record = posted.ToArray(),
            evaluation = Packed.Of(WireJson.ToBytes(evaluation, EvaluationJson.Default.Evaluation)),
            landlord = law.IsLandlords(record) ? 1 : 0,
            landlordCheck = law.IsLandlordsCheck(record, evaluation) ? 1 : 0,
        };
        var visit = new VisitRows(tenant, [new ArrivingVisit(evaluation.EvaluationId!, record, evaluation, due ?? [])], evaluation.EvaluatedAt!.Value, law, keyId);
        return database.WriteAsync(
            async transaction =>
            {
                Task<int> Execute(string sql) => transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, row, transaction, cancellationToken: cancel));
                var replaces = row.supersedes is not null && evaluation.Supersedes?.StillStands != true;
                if (replaces)
                    await DatabaseKind.WriteAloneAsync(transaction, tenant.Name, cancel);
                if ((replaces && await Execute(Supersede) + await Execute(SupersedeOfAudit) != 1) || await Execute(Insert) != 1)
                    return false;

                await visit.WriteAsync(transaction, cancel);
                if (keyed is not null)
                    await IdempotencyStore.SettleAsync(database, transaction, tenant, keyed, cancel);
                return true;
            },
            cancel);
    }

    /// <summary>The evaluation with this id; null when this tenant has none.</summary>
    public async Task<StoredEvaluation?> FindAsync(Tenant tenant, string evaluationId, CancellationToken cancel)
    {
        var row = await database.ReadAsync(connection => connection.QuerySingleOrDefaultAsync<Row>(Command(Select, tenant, evaluationId, cancel)), cancel);
        return row is null
            ? await FindOfAuditAsync(tenant, evaluationId, cancel)
            : new StoredEvaluation(
                JsonSerializer.Deserialize(Packed.Open(row.Json), EvaluationJson.Wire.Evaluation)!,
                ShownBy(row.Shown),
                row.SupersededBy);
    }

    /// <summary>The record as posted; null when this tenant has no such evaluation.</summary>
    public Task<byte[]?> FindRecordAsync(Tenant tenant, string evaluationId, CancellationToken cancel) => database.ReadAsync(
        async connection => await connection.QuerySingleOrDefaultAsync<byte[]>(Command(SelectRecord, tenant, evaluationId, cancel))
            ?? (await connection.QuerySingleOrDefaultAsync<byte[]>(Command(SelectRecordOfAudit, tenant, evaluationId, cancel)) is { } packed ? Packed.Open(packed) : null),
        cancel);

    /// <summary>What an audit says of a record: of answers that only pass it keeps the number.</summary>
    private async Task<StoredEvaluation?> FindOfAuditAsync(Tenant tenant, string evaluationId, CancellationToken cancel)
    {
        var row = await database.ReadAsync(connection => connection.QuerySingleOrDefaultAsync<LineRow>(Command(SelectOfAudit, tenant, evaluationId, cancel)), cancel);
        return row is null
            ? null
            : new StoredEvaluation(
                JsonSerializer.Deserialize(Packed.Open(row.Json), StoredJson.Wire.AuditLine)!.Evaluation!,
                Include.Problems,
                row.Line is { } line ? EvaluationIds.Of(row.AuditId, line) : row.SupersededBy);
    }

    /// <summary>Stores of before December 2026 call it default where passes are shown as rows.</summary>
    private static Include ShownBy(string stored) => stored == "default" ? Include.Passes : Enum.Parse<Include>(stored, ignoreCase: true);

    private static CommandDefinition Command(string sql, Tenant tenant, string evaluationId, CancellationToken cancel) =>
        new(sql, new { tenant = tenant.Name, evaluationId }, cancellationToken: cancel);

    private sealed class Row
    {
        public required byte[] Json { get; init; }

        public required string Shown { get; init; }

        public string? SupersededBy { get; init; }
    }

    private sealed class LineRow
    {
        public required byte[] Json { get; init; }

        public required string AuditId { get; init; }

        public long? Line { get; init; }

        public string? SupersededBy { get; init; }
    }
}

/// <summary>An evaluation as it was stored.</summary>
/// <param name="Evaluation">The whole of it.</param>
/// <param name="Shown">How much of it was asked for when the record was posted.</param>
/// <param name="SupersededBy">The evaluation that replaced it, if one did.</param>
public sealed record StoredEvaluation(Evaluation Evaluation, Include Shown, string? SupersededBy);
