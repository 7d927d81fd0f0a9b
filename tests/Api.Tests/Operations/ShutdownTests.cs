using System.Diagnostics;
using Microsoft.Data.Sqlite;

namespace Api.Tests.Operations;

/// <summary>A service that is told to end ends in good order.</summary>
[Collection("Heavy processes")]
public sealed class ShutdownTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    [Fact]
    public async Task Told_to_end_it_finishes_what_it_judges_and_holds_nothing_back()
    {
        var folder = Directory.CreateTempSubdirectory("end-");
        string[] arguments = ["--urls=http://127.0.0.1:0", $"--Store:Path={Path.Combine(folder.FullName, "c.db")}", "--Store:Create=true", "--Audits:LeaseSeconds=600"];
        Uri audit;
        var watch = new Stopwatch();
        using (var first = new RunningService(arguments))
        {
            using var client = await first.Listening();
            audit = (await client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 3000)), later: true)).Headers.Location!;
            await Task.Delay(500);
            watch.Start();
            Assert.Equal(0, await first.Terminated());
            watch.Stop();
        }

        // As long as the unit in the README of Operations waits before it kills.
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(45), $"It took {watch.Elapsed.TotalSeconds} s to end.");
        await using (var connection = new SqliteConnection($"Data Source={Path.Combine(folder.FullName, "c.db")}"))
        {
            await connection.OpenAsync();
            await using var command = connection.CreateCommand();
            command.CommandText = "SELECT SUM(is_done = 0), SUM(is_done = 0 AND claim IS NOT NULL), SUM(is_done = 1) FROM audit_chunks";
            await using var counted = await command.ExecuteReaderAsync();
            Assert.True(await counted.ReadAsync());
            Assert.True(counted.GetInt32(0) > 0, "It was done before it was told to end: this proves nothing.");
            Assert.Equal(0, counted.GetInt32(1));
            Assert.True(counted.GetInt32(2) > 0, "It was told to end before it began: this proves nothing.");
        }

        // With a lease of ten minutes, a chunk that was not handed back would keep the next service waiting.
        using var second = new RunningService(arguments);
        using var again = await second.Listening();
        Assert.Equal("completed", (await again.Completed(audit))["state"].Text());
        Assert.Equal(0, await second.Terminated());
        folder.Delete(recursive: true);
    }
}
