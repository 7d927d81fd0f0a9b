using Storage.Tests.Shared;
using static Storage.Tests.Shared.LandlordRecords;

namespace Storage.Tests;

public sealed class RetentionTests : IDisposable
{
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
}
