using Jobs.Queue;

namespace Jobs.Tests;

/// <summary>What is asked for each chunk is searched by an index as far as it goes.</summary>
public sealed class QueryPlanTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public async Task The_next_chunk_is_searched_in_its_audit()
    {
        var sql = WaitingChunks.Take.Replace("{0}", "", StringComparison.Ordinal);
        var plan = await QueryPlan.OfAsync(_scratch.Open("sqlite"), sql, new { claim = "c", until = "2027", now = "2026" });

        Assert.DoesNotContain(plan, step => step.StartsWith("SCAN", StringComparison.Ordinal) && !step.StartsWith("SCAN a", StringComparison.Ordinal));
        Assert.Contains(plan, step => step.StartsWith("SEARCH c USING INDEX audit_chunks_open (tenant=? AND audit_id=?)", StringComparison.Ordinal));
    }
}
