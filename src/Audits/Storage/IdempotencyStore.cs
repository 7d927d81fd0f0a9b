using Dapper;

namespace Audits;

/// <summary>Which evaluation a caller's key stands for. A key whose evaluation was never stored is free again.</summary>
public sealed class IdempotencyStore(Database database)
{
    private const string Upsert = """
        INSERT INTO idempotency_keys (tenant, idempotency_key, fingerprint, evaluation_id)
        VALUES (@tenant, @key, @fingerprint, @evaluationId)
        ON CONFLICT (tenant, idempotency_key) DO UPDATE SET fingerprint = excluded.fingerprint, evaluation_id = excluded.evaluation_id
        """;

    private const string Select = """
        SELECT fingerprint AS Fingerprint, evaluation_id AS EvaluationId
        FROM idempotency_keys WHERE tenant = @tenant AND idempotency_key = @key
        """;

    /// <summary>Notes, before it is stored, under which id the evaluation of a key will stand.</summary>
    public Task SaveAsync(Tenant tenant, string key, KeyedRequest request, CancellationToken cancel)
    {
        var row = new { tenant = tenant.Name, key, fingerprint = request.Fingerprint, evaluationId = request.EvaluationId };
        return database.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(Upsert, row, transaction, cancellationToken: cancel)) == 1,
            cancel);
    }

    /// <summary>What was noted for a key; null when nothing was.</summary>
    public Task<KeyedRequest?> FindAsync(Tenant tenant, string key, CancellationToken cancel) => database.ReadAsync(
        connection => connection.QuerySingleOrDefaultAsync<KeyedRequest>(new CommandDefinition(Select, new { tenant = tenant.Name, key }, cancellationToken: cancel)),
        cancel);
}

/// <summary>A request that came with a key.</summary>
/// <param name="Fingerprint">SHA-256 over what was asked, lower-case hex.</param>
/// <param name="EvaluationId">Id of its evaluation.</param>
public sealed record KeyedRequest(string Fingerprint, string EvaluationId);
