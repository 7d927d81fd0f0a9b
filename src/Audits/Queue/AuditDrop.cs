using Dapper;

namespace Audits;

/// <summary>Removes an audit with all that belongs to it.</summary>
internal static class AuditDrop
{
    private static readonly string[] Tables = ["audit_chunks", "audit_lines", "audit_findings", "audit_corrections", "preview_changes", "audits"];

    public static Task<bool> DropAuditAsync(this Database database, string tenant, string auditId, CancellationToken cancel) => database.WriteAsync(
        async transaction =>
        {
            foreach (var table in Tables)
            {
                await transaction.Connection!.ExecuteAsync(
                    new CommandDefinition($"DELETE FROM {table} WHERE tenant = @tenant AND audit_id = @auditId", new { tenant, auditId }, transaction, cancellationToken: cancel));
            }

            return true;
        },
        cancel);
}
