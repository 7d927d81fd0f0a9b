using Storage.Tests.Shared;

namespace Storage.Tests;

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
        var (sql, values) = HistoryStore.CommandOf([Scratch.Record(), Scratch.Record()]);
        values.AddDynamicParams(new { tenant = "a", knownAt = "2026", MostVisits = 12 });

        var visits = (await QueryPlan.OfAsync(_scratch.Open("sqlite"), sql, values)).Where(step => step.Contains(" v ", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, visits.Count);
        Assert.All(visits, step => Assert.StartsWith("SEARCH", step.Trim(), StringComparison.Ordinal));
        Assert.Contains(visits, step => step.Contains("(tenant=? AND serial_number=? AND finished_at<?)", StringComparison.Ordinal));
        Assert.Contains(visits, step => step.Contains("(tenant=? AND record_id=? AND finished_at>? AND finished_at<?)", StringComparison.Ordinal));
    }
}
