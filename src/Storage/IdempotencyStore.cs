using System.Data.Common;
using Dapper;

namespace Storage;

/// <summary>
/// Which evaluation a caller's key stands for. The row of a key is its lock, across all instances: it is inserted first and then its
/// holder's for a time, it is settled in the transaction that writes the evaluation, and it goes where none is written.
/// </summary>
/// <param name="database">Where the rows are.</param>
/// <param name="lease">How long a key is its holder's; who has not stored its evaluation by then, because it was killed, has lost it.</param>
public sealed class IdempotencyStore(Database database, TimeSpan lease)
{
    // Which of two holders was first is settled by the row alone. A subquery here would not see what another has just committed.
    private const string Take = """
        INSERT INTO idempotency_keys (tenant, idempotency_key, fingerprint, evaluation_id, lease_until)
        VALUES (@tenant, @key, @fingerprint, @evaluationId, {0} + @lease)
        ON CONFLICT (tenant, idempotency_key) DO UPDATE SET
            fingerprint = excluded.fingerprint, evaluation_id = excluded.evaluation_id, lease_until = excluded.lease_until
        WHERE idempotency_keys.lease_until < {0}
        """;

    private const string Select = """
        SELECT fingerprint AS Fingerprint, evaluation_id AS EvaluationId, lease_until IS NULL AS IsSettled
        FROM idempotency_keys WHERE tenant = @tenant AND idempotency_key = @key
        """;

    private const string Settle = """
        UPDATE idempotency_keys SET lease_until = NULL
        WHERE tenant = @tenant AND idempotency_key = @key AND evaluation_id = @evaluationId AND lease_until >= {0}
        """;

    private const string Release = """
        DELETE FROM idempotency_keys
        WHERE tenant = @tenant AND idempotency_key = @key AND evaluation_id = @evaluationId AND lease_until IS NOT NULL
        """;

    private const string Forget = """
        DELETE FROM idempotency_keys
        WHERE tenant = @tenant AND idempotency_key = @key AND evaluation_id = @evaluationId AND lease_until IS NULL
        """;

    /// <summary>Takes a key that nobody holds.</summary>
    /// <returns>Null: it is taken, and its evaluation is to be stored with <paramref name="asked"/>. Else who has it.</returns>
    public async Task<KeyHolder?> TakeAsync(Tenant tenant, KeyedRequest asked, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(asked);
        while (true)
        {
            if (await ExecuteAsync(Take.Replace("{0}", database.NowInMilliseconds, StringComparison.Ordinal), tenant, asked, cancel))
                return null;

            // Gone in between: its holder has just given it up.
            if (await FindAsync(tenant, asked.Key, cancel) is { } holder)
                return holder;
        }
    }

    /// <summary>Gives a key up of which nothing came. One that is settled, or another's by now, stays.</summary>
    public Task ReleaseAsync(Tenant tenant, KeyedRequest asked, CancellationToken cancel) => ExecuteAsync(Release, tenant, asked, cancel);

    /// <summary>Frees a settled key whose evaluation is no longer stored.</summary>
    public Task ForgetAsync(Tenant tenant, string key, KeyHolder settled, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(settled);
        return ExecuteAsync(Forget, tenant, new KeyedRequest(key, settled.Fingerprint, settled.EvaluationId), cancel);
    }

    /// <summary>Settles a key in the transaction that writes its evaluation; no later holder can take it from there on.</summary>
    /// <exception cref="KeyLostException">The lease was over: the key may be another's.</exception>
    internal static async Task SettleAsync(Database database, DbTransaction transaction, Tenant tenant, KeyedRequest asked, CancellationToken cancel)
    {
        var sql = Settle.Replace("{0}", database.NowInMilliseconds, StringComparison.Ordinal);
        var row = new { tenant = tenant.Name, key = asked.Key, evaluationId = asked.EvaluationId };
        if (await transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, row, transaction, cancellationToken: cancel)) != 1)
            throw new KeyLostException();
    }

    private Task<KeyHolder?> FindAsync(Tenant tenant, string key, CancellationToken cancel) => database.ReadAsync(
        connection => connection.QuerySingleOrDefaultAsync<KeyHolder>(new CommandDefinition(Select, new { tenant = tenant.Name, key }, cancellationToken: cancel)),
        cancel);

    private Task<bool> ExecuteAsync(string sql, Tenant tenant, KeyedRequest asked, CancellationToken cancel)
    {
        var row = new { tenant = tenant.Name, key = asked.Key, fingerprint = asked.Fingerprint, evaluationId = asked.EvaluationId, lease = (long)lease.TotalMilliseconds };
        return database.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, row, transaction, cancellationToken: cancel)) == 1,
            cancel);
    }
}

/// <summary>A request that came with a key.</summary>
/// <param name="Key">The caller's key.</param>
/// <param name="Fingerprint">SHA-256 over what was asked, lower-case hex.</param>
/// <param name="EvaluationId">Id that its evaluation is to have.</param>
public sealed record KeyedRequest(string Key, string Fingerprint, string EvaluationId);

/// <summary>Who has a key.</summary>
public sealed class KeyHolder
{
    /// <summary>SHA-256 over what it asked, lower-case hex.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>Id of its evaluation.</summary>
    public required string EvaluationId { get; init; }

    /// <summary>Is the evaluation stored? Else it is still being judged.</summary>
    public required bool IsSettled { get; init; }
}

/// <summary>The lease of a key was over before its evaluation was stored: nothing was stored.</summary>
public sealed class KeyLostException() : Exception("The key was held for too long and may be another's by now.");
