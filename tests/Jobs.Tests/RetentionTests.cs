using System.Text;
using System.Text.Json.Nodes;
using Jobs.Summary;
using Records.Many;
using Records.Reading;
using Storage;

namespace Jobs.Tests;

public sealed class RetentionTests : IDisposable
{
    private static readonly DateTimeOffset Before = new(2028, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    /// <summary>GSIUR 1998, regulation 36(3)(c): until two further checks; a repair is no check, and a check posted twice is one.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_landlords_record_stays_until_two_later_checks_are_there(string kind)
    {
        var database = _scratch.Open(kind);
        var number = 0;
        foreach (var (serial, use, days, jobType) in new (string, string?, string[], string)[]
        {
            ("two later", "rented", ["2026-09-14", "2027-09-10", "2028-09-01"], "annualService"),
            ("one later", "rented", ["2026-09-14", "2028-09-01"], "annualService"),
            ("one later, posted twice", "rented", ["2026-09-14", "2028-09-01", "2028-09-01"], "annualService"),
            ("repaired twice", "rented", ["2026-09-14"], "annualService"),
            ("repaired twice", "rented", ["2027-01-14", "2027-02-14"], "repair"),
            ("use not recorded", null, ["2026-09-14", "2027-09-10", "2028-09-01"], "annualService"),
            ("owned", "ownerOccupied", ["2026-09-14", "2028-09-01"], "annualService"),
        })
        {
            foreach (var day in days)
                await Save(database, ++number, serial, use, day, jobType);
        }

        var removed = new List<RemovedRecord>();
        var counts = await new Retention(database, Scratch.Rules.Law, TimeProvider.System).PurgeAsync(Scratch.A, Before, removed.Add, default);

        Assert.Equal(["2026-09-14 owned", "2026-09-14 two later"], removed.Select(record => $"{record.FinishedAt[..10]} {record.SerialNumber}").Order(StringComparer.Ordinal));
        Assert.Equal(new PurgeCounts(2, 0, 0, Held: 8), counts);
        Assert.Equal(2, await Held(database, "two later"));
        Assert.Equal(3, await Held(database, "use not recorded"));
        Assert.Equal(new PurgeCounts(0, 0, 0, 0), await new Retention(database, Scratch.Rules.Law, TimeProvider.System).PurgeAsync(Scratch.B, Before, removed.Add, default));
    }

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

    [Fact]
    public async Task A_backup_is_a_store_of_its_own()
    {
        var database = _scratch.Open();
        await Save(database, 1, "s", "rented", "2026-09-14");
        var file = _scratch.File + ".copy";

        await database.BackupAsync(file, default);

        using var copy = Database.Open(file, StoreOpening.ToRead);
        Assert.Equal(1, await Held(copy, "s"));
    }

    private static async Task<int> Held(Database database, string serial)
    {
        using var output = new MemoryStream();
        return await new ApplianceExport(database).ExportAsync(Scratch.A, serial, "Quillback", output, default);
    }

    private static async Task Save(Database database, int number, string serial, string? use, string day, string jobType = "annualService")
    {
        var bytes = Record(serial, use, day, jobType);
        Assert.True(await new EvaluationStore(database, Scratch.Rules.Law).SaveAsync(Scratch.A, RecordReader.Read(bytes).Record!, bytes, Scratch.Evaluation(number), global::Findings.Include.All, default));
    }

    private static byte[] Record(string serial, string? use, string day, string jobType)
    {
        var json = JsonNode.Parse(Scratch.Posted)!;
        json["appliance"]!["serialNumber"] = serial;
        json["jobType"] = jobType;
        json["startedAt"] = $"{day}T09:25:00+01:00";
        json["finishedAt"] = $"{day}T10:25:00+01:00";
        if (use is null)
            json["premises"]!.AsObject().Remove("use");
        else
            json["premises"]!["use"] = use;
        return Encoding.UTF8.GetBytes(json.ToJsonString());
    }
}
