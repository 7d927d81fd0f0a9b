using Dapper;
using Storage;

namespace Jobs.Looks;

/// <summary>Reads the stored records of a period and finds what is worth a look.</summary>
public sealed class LookStore(Database database)
{
    /// <summary>Most records of one period.</summary>
    public const int MostRecords = 50_000;

    private const string Count = """
        SELECT COUNT(*) FROM visits WHERE tenant = @tenant AND replaced_at IS NULL AND finished_at >= @from AND finished_at < @before
        """;

    private const string Select = $"""
        SELECT v.evaluation_id AS EvaluationId, e.record AS Record, l.record AS PackedRecord FROM visits v {StoredVisits.Join}
        WHERE v.tenant = @tenant AND v.replaced_at IS NULL AND v.finished_at >= @from AND v.finished_at < @before ORDER BY v.evaluation_id
        """;

    /// <summary>What is worth a look; null where the period has more than <see cref="MostRecords"/> records.</summary>
    /// <param name="tenant">Whose records.</param>
    /// <param name="from">First day (UTC) on which the visits ended.</param>
    /// <param name="to">Last day.</param>
    /// <param name="rate">Allowed rate of false discoveries, 0 to 1.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<LookReport?> FindAsync(Tenant tenant, DateOnly from, DateOnly to, decimal rate, CancellationToken cancel)
    {
        var asked = new { tenant = tenant.Name, from = Database.TextOf(from), before = Database.TextOf(to.AddDays(1)) };
        if (await database.ReadAsync(connection => connection.ExecuteScalarAsync<int>(new CommandDefinition(Count, asked, cancellationToken: cancel)), cancel) > MostRecords)
            return null;

        var all = await database.ReadAsync(
            async connection =>
            {
                var facts = new List<LookFacts>();
                await foreach (var row in connection.QueryUnbufferedAsync<StoredVisit>(Select, asked).WithCancellation(cancel))
                {
                    if (row.ReadRecord() is { } record)
                        facts.Add(LookFacts.Of(row.EvaluationId, record));
                }

                return facts;
            },
            cancel);
        return Anomalies.Report(from, to, rate, all);
    }
}
