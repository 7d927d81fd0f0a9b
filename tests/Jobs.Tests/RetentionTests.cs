using System.Text.Json.Nodes;
using Records.Many;
using Storage;
using static Storage.Tests.Shared.LandlordRecords;

namespace Jobs.Tests;

/// <summary>What of audits is held, and what goes.</summary>
public sealed class RetentionTests
{
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task An_audited_record_is_held_of_its_appliance_too(string kind)
    {
        using var bench = new AuditBench(kind);
        await bench.Post(AuditBench.Month(2));
        await bench.WorkOff();
        using var output = new MemoryStream();

        Assert.Equal(1, await new ApplianceExport(bench.Store).ExportAsync(Scratch.A, "S-2", null, output, default));

        Assert.Equal("M-2", JsonNode.Parse(output.ToArray())!["record"]!["recordId"]!.GetValue<string>());
        Assert.Equal("unsafe", JsonNode.Parse(output.ToArray())!["answer"]!["evaluation"]!["outcome"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task An_audit_of_which_nothing_is_left_goes_as_a_whole(string kind)
    {
        using var bench = new AuditBench(kind);
        var gone = await bench.Post(AuditBench.Month(700));
        await bench.WorkOff();
        await Save(bench.Store, 1, "S-1", "rented", "2027-09-01");
        var rented = new RecordLine(1, Record("S-1", "rented", "2026-09-14", "annualService"));
        var kept = await bench.Post([rented, new RecordLine(2, "{}"u8.ToArray())]);
        await bench.WorkOff();

        var removed = new List<RemovedRecord>();
        Assert.Equal(new PurgeCounts(0, 560, 1, Held: 2), await new Retention(bench.Store, Scratch.Rules.Law, TimeProvider.System).PurgeAsync(Scratch.A, Before, removed.Add, default));

        Assert.Equal(Enumerable.Range(1, 700).Where(line => line % 5 != 3), removed.Select(record => (int)record.Line).Order());
        Assert.Null(await bench.Audits.FindAsync(Scratch.A, gone, default));
        Assert.Equal(2, (await bench.Audits.LinesAsync(Scratch.A, kept, default)).Count);
        Assert.Equal(0, await bench.Findings.CountAsync(Scratch.A, gone, AuditBench.AnyRow, default));

        // Checked once as an evaluation and once in an audit, the appliance has had its two.
        await Save(bench.Store, 2, "S-1", "rented", "2028-09-01");
        Assert.Equal(new PurgeCounts(0, 1, 1, Held: 1), await new Retention(bench.Store, Scratch.Rules.Law, TimeProvider.System).PurgeAsync(Scratch.A, Before, removed.Add, default));
    }
}
