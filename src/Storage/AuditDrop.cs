using Dapper;

namespace Storage;

/// <summary>Removes an audit with all that belongs to it.</summary>
internal static class AuditDrop
{
    private static readonly string[] OfRecords = ["due_dates", "visits", "preview_changes"];

    private static readonly string[] Tables = ["audit_chunks", "audit_lines", "audit_findings", "audit_corrections", "preview_changes", "audits"];

    public static Task<bool> DropAuditAsync(this Database database, string tenant, string auditId, CancellationToken cancel) => database.WriteAsync(
        async transaction =>
        {
            var (below, above) = EvaluationIds.Around(auditId);
            foreach (var table in OfRecords)
                await Execute($"DELETE FROM {table} WHERE tenant = @tenant AND evaluation_id > @below AND evaluation_id < @above");
            foreach (var table in Tables)
                await Execute($"DELETE FROM {table} WHERE tenant = @tenant AND audit_id = @auditId");
            return true;

            Task<int> Execute(string sql) => transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, new { tenant, auditId, below, above }, transaction, cancellationToken: cancel));
        },
        cancel);
}
