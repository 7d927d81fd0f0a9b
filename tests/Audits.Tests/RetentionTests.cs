using System.Text;
using System.Text.Json.Nodes;
using ServiceRecords;

namespace Audits.Tests;

public sealed class RetentionTests : IDisposable
{
    private static readonly DateTimeOffset Before = new(2028, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_landlords_record_stays_until_two_later_ones_are_there(string kind)
    {
        var database = _scratch.Open(kind);
        foreach (var (number, serial, use, year) in new[]
        {
            (1, "two-later", "rented", 2026), (2, "two-later", "rented", 2027), (3, "two-later", "rented", 2028),
            (4, "one-later", "rented", 2026), (5, "one-later", "rented", 2028),
            (6, "not-said", null, 2026), (7, "owned", "ownerOccupied", 2026), (8, "owned", "ownerOccupied", 2028),
        })
        {
            await Save(database, number, serial, use, year);
        }

        var (evaluations, lines) = await new Retention(database).PurgeAsync(Scratch.A, Before, default);

        Assert.Equal((2, 0), (evaluations, lines));
        var held = await Task.WhenAll(new[] { "two-later", "one-later", "not-said", "owned" }.Select(serial => Held(database, serial)));
        Assert.Equal([2, 2, 1, 1], held);
        Assert.Equal((0, 0), await new Retention(database).PurgeAsync(Scratch.B, Before, default));
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

        Assert.Equal(1, await new Retention(bench.Store).ExportAsync(Scratch.A, "S-2", null, output, default));

        Assert.Equal("M-2", JsonNode.Parse(output.ToArray())!["record"]!["recordId"]!.GetValue<string>());
        Assert.Equal("unsafe", JsonNode.Parse(output.ToArray())!["answer"]!["evaluation"]!["outcome"]!.GetValue<string>());
        Assert.Equal(2, (await new Retention(bench.Store).PurgeAsync(Scratch.A, Before, default)).AuditLines);
    }

    [Fact]
    public async Task A_backup_is_a_store_of_its_own()
    {
        var database = _scratch.Open();
        await Save(database, 1, "s", "rented", 2026);
        var file = _scratch.File + ".copy";

        await database.BackupAsync(file, default);

        using var copy = Database.Open(file);
        Assert.Equal(1, await Held(copy, "s"));
    }

    private static async Task<int> Held(Database database, string serial)
    {
        using var output = new MemoryStream();
        return await new Retention(database).ExportAsync(Scratch.A, serial, "Quillback", output, default);
    }

    private static async Task Save(Database database, int number, string serial, string? use, int year)
    {
        var json = JsonNode.Parse(Scratch.Posted)!;
        json["appliance"]!["serialNumber"] = serial;
        json["finishedAt"] = $"{year}-09-14T10:25:00+01:00";
        if (use is null)
            json["premises"]!.AsObject().Remove("use");
        else
            json["premises"]!["use"] = use;
        var bytes = Encoding.UTF8.GetBytes(json.ToJsonString());
        Assert.True(await new EvaluationStore(database).SaveAsync(Scratch.A, RecordReader.Read(bytes).Record!, bytes, Scratch.Evaluation(number), global::Findings.Include.All, default));
    }
}
