using Dapper;
using Jobs.Queue;
using Storage;

namespace Jobs.Tests;

/// <summary>
/// What is asked for each record or chunk is searched by an index as far as it goes: what looks at every row of a tenant gets slower with all that
/// is stored, and no small test notices. The plan is that of the SQLite that travels with the program, without statistics.
/// </summary>
public sealed class QueryPlanTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public async Task Earlier_visits_are_searched_by_the_appliance()
    {
        var (sql, values) = HistoryStore.CommandOf([(0, Scratch.Record()), (1, Scratch.Record())]);
        values.AddDynamicParams(new { tenant = "a", knownAt = "2026", MostVisits = 12 });

        var visits = Assert.Single(await PlanOf(sql, values), step => step.Contains(" v ", StringComparison.Ordinal));
        Assert.Contains("(tenant=? AND serial_number=? AND finished_at<?)", visits, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_next_chunk_is_searched_in_its_audit()
    {
        var sql = WaitingChunks.Take.Replace("{0}", "", StringComparison.Ordinal);
        var plan = await PlanOf(sql, new { claim = "c", until = "2027", now = "2026" });

        Assert.DoesNotContain(plan, step => step.StartsWith("SCAN", StringComparison.Ordinal) && !step.StartsWith("SCAN a", StringComparison.Ordinal));
        Assert.Contains(plan, step => step.StartsWith("SEARCH c USING INDEX audit_chunks_open (tenant=? AND audit_id=?)", StringComparison.Ordinal));
    }

    private Task<List<string>> PlanOf(string sql, object values) => _scratch.Open("sqlite").ReadAsync(
        async connection => (await connection.QueryAsync<(long, long, long, string Detail)>("EXPLAIN QUERY PLAN " + sql, values)).Select(step => step.Detail).ToList(), default);
}
