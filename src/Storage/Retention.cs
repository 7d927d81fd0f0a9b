using System.Data.Common;
using Dapper;
using Visits.Facts;

namespace Storage;

/// <summary>
/// What must be kept, and what may go, by what the law of records says. Whether an appliance was taken out is not recorded here, so only
/// further checks end a landlord's duty.
/// </summary>
public sealed class Retention(Database database, IRecordLaw law, TimeProvider clock)
{
    private const int AtOnce = 500;

    /// <summary>Days on which the appliance of row x was checked again: twice on one day, or once in two audits, is one check.</summary>
    private const string LaterChecks = """
        SELECT COUNT(*) FROM (
            SELECT substr(n.finished_at, 1, 10) AS day FROM evaluations n WHERE {0}
            UNION SELECT substr(n.finished_at, 1, 10) FROM audit_lines n WHERE {0} AND n.corrected_by IS NULL) checks
        """;

    private const string IsLaterCheck = """
        n.tenant = x.tenant AND n.serial_number = x.serial_number AND COALESCE(n.maker, '') = COALESCE(x.maker, '')
            AND n.landlord_check = 1 AND n.superseded_by IS NULL AND substr(n.finished_at, 1, 10) > substr(x.finished_at, 1, 10)
        """;

    private static readonly string IsOver =
        $"x.tenant = @tenant AND x.finished_at < @before AND (x.landlord = 0 OR ({LaterChecks.Replace("{0}", IsLaterCheck, StringComparison.Ordinal)}) >= @checks)";

    private static readonly string DeleteEvaluations = $"""
        DELETE FROM evaluations WHERE (tenant, evaluation_id) IN (
            SELECT x.tenant, x.evaluation_id FROM evaluations x WHERE {IsOver} ORDER BY x.finished_at LIMIT {AtOnce})
        RETURNING evaluation_id AS Id, 0 AS Line, record_id AS RecordId, maker AS Maker, serial_number AS SerialNumber, finished_at AS FinishedAt
        """;

    private static readonly string DeleteLines = $"""
        DELETE FROM audit_lines WHERE (tenant, audit_id, line) IN (
            SELECT x.tenant, x.audit_id, x.line FROM audit_lines x WHERE {IsOver} ORDER BY x.finished_at LIMIT {AtOnce})
        RETURNING audit_id AS Id, line AS Line, record_id AS RecordId, maker AS Maker, serial_number AS SerialNumber, finished_at AS FinishedAt
        """;

    /// <summary>What was worked out from a record, kept beside it.</summary>
    private static readonly string[] DeleteBeside = [.. new[] { "due_dates", "visits", "preview_changes", "idempotency_keys" }.Select(table => $"DELETE FROM {table} WHERE tenant = @tenant AND evaluation_id = @evaluationId")];

    /// <summary>Keys whose holder was killed before anything came of them.</summary>
    private const string DeleteEndedKeys = "DELETE FROM idempotency_keys WHERE tenant = @tenant AND lease_until < {0}";

    private const string DeleteFindings = "DELETE FROM audit_findings WHERE tenant = @tenant AND audit_id = @Id AND line = @Line";

    /// <summary>Ended that long ago, and every record gone but those that nobody could read.</summary>
    private const string SelectEmptyAudits = """
        SELECT audit_id FROM audits a
        WHERE a.tenant = @tenant AND a.finished_at < @before
            AND NOT EXISTS (SELECT 1 FROM audit_lines l WHERE l.tenant = a.tenant AND l.audit_id = a.audit_id AND l.finished_at IS NOT NULL)
        """;

    private const string CountHeld = """
        SELECT (SELECT COUNT(*) FROM evaluations WHERE tenant = @tenant AND finished_at < @before)
            + (SELECT COUNT(*) FROM audit_lines WHERE tenant = @tenant AND finished_at < @before)
        """;

    /// <summary>
    /// Removes records older than <paramref name="before"/>, which the caller keeps as far back as the law asks; of landlords' records
    /// only those with as many later checks of the same appliance as end the duty to keep them. Where it is not known whose a record is, it counts as a landlord's. Some hundred go at a time,
    /// so that others can work meanwhile.
    /// </summary>
    /// <param name="tenant">Whose records.</param>
    /// <param name="before">When the work was finished at the latest.</param>
    /// <param name="removed">Is told of each record once it is gone.</param>
    /// <param name="cancel">Stops; what is gone by then is gone.</param>
    public async Task<PurgeCounts> PurgeAsync(Tenant tenant, DateTimeOffset before, Action<RemovedRecord> removed, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(removed);
        var asked = new { tenant = tenant.Name, before = Database.TextOf(before), checks = law.ChecksThatEndKeeping };
        var evaluations = await RemoveAsync(DeleteEvaluations, isOfAudit: false);
        var lines = await RemoveAsync(DeleteLines, isOfAudit: true);
        var audits = (await database.ReadAsync(connection => connection.QueryAsync<string>(Command(SelectEmptyAudits)), cancel)).AsList();
        foreach (var auditId in audits)
            await database.DropAuditAsync(tenant.Name, auditId, cancel);
        await database.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync(Command(DeleteEndedKeys.Replace("{0}", database.NowInMilliseconds, StringComparison.Ordinal), transaction)) > 0, cancel);
        var held = await database.ReadAsync(connection => connection.ExecuteScalarAsync<int>(Command(CountHeld)), cancel);
        return new PurgeCounts(evaluations, lines, audits.Count, held);

        async Task<int> RemoveAsync(string delete, bool isOfAudit)
        {
            for (var count = 0; ;)
            {
                List<RemovedRecord> gone = [];
                await database.WriteAsync(
                    async transaction =>
                    {
                        await DatabaseKind.WriteAloneAsync(transaction, asked.tenant, cancel);
                        gone = (await transaction.Connection!.QueryAsync<RemovedRecord>(Command(delete, transaction))).AsList();
                        foreach (var sql in isOfAudit ? [DeleteFindings, .. DeleteBeside] : DeleteBeside)
                        {
                            await transaction.Connection!.ExecuteAsync(
                                sql, gone.Select(record => new { asked.tenant, record.Id, record.Line, evaluationId = IdOf(record) }), transaction);
                        }

                        var now = Database.TextOf(clock.GetUtcNow());
                        await Journal.AppendAsync(transaction, asked.tenant, gone.ConvertAll(record => new NewEntry(JournalKind.Purge, IdOf(record), now, KeyId: null)), cancel);

                        return true;
                    },
                    cancel);
                gone.ForEach(removed);
                count += gone.Count;
                if (gone.Count == 0)
                    return count;
            }

            string IdOf(RemovedRecord record) => isOfAudit ? EvaluationIds.Of(record.Id, record.Line) : record.Id;
        }

        CommandDefinition Command(string sql, DbTransaction? transaction = null) => new(sql, asked, transaction, commandTimeout: 0, cancellationToken: cancel);
    }
}

/// <summary>A record that a purge has removed.</summary>
public sealed class RemovedRecord
{
    /// <summary>Its evaluation, or the audit that it was part of.</summary>
    public required string Id { get; init; }

    /// <summary>Its line in the audit; 0 of an evaluation.</summary>
    public required long Line { get; init; }

    /// <summary>The caller's id of it.</summary>
    public string? RecordId { get; init; }

    /// <summary>Maker of the appliance.</summary>
    public string? Maker { get; init; }

    /// <summary>Its serial number.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>When the work was finished (RFC 3339, UTC).</summary>
    public required string FinishedAt { get; init; }
}

/// <summary>What a purge has done.</summary>
/// <param name="Evaluations">How many evaluations went, each with its record.</param>
/// <param name="AuditLines">How many records of audits went, each with what was said of it.</param>
/// <param name="Audits">How many audits went as a whole, since none of their records is left.</param>
/// <param name="Held">How many records of that age stay: landlords' without two later checks.</param>
public sealed record PurgeCounts(int Evaluations, int AuditLines, int Audits, int Held);
