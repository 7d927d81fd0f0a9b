using Dapper;
using ServiceRecords;

namespace Audits;

/// <summary>Reads the stored records of a period and finds what is worth a look.</summary>
public sealed class LookStore(Database database)
{
    /// <summary>Most records of one period.</summary>
    public const int MostRecords = 50_000;

    private const string Count = """
        SELECT COUNT(*) FROM evaluations WHERE tenant = @tenant AND superseded_by IS NULL AND finished_at >= @from AND finished_at < @before
        """;

    private const string Select = """
        SELECT evaluation_id AS EvaluationId, record AS Record FROM evaluations
        WHERE tenant = @tenant AND superseded_by IS NULL AND finished_at >= @from AND finished_at < @before ORDER BY evaluation_id
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
                await foreach (var row in connection.QueryUnbufferedAsync<Row>(Select, asked).WithCancellation(cancel))
                {
                    if (RecordReader.Read(row.Record).Record is { } record)
                        facts.Add(LookFacts.Of(row.EvaluationId, record));
                }

                return facts;
            },
            cancel);
        return Looks.Report(from, to, rate, all);
    }

    private sealed class Row
    {
        public required string EvaluationId { get; init; }

        public required byte[] Record { get; init; }
    }
}
