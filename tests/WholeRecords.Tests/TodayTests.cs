namespace WholeRecords.Tests;

/// <summary>The written page is what the rules of today make of the whole records. With REWRITE_TODAY=1 it is written anew; no automatic run sets it.</summary>
public sealed class TodayTests
{
    [Fact]
    public async Task The_committed_page_is_what_the_rules_say()
    {
        var file = Path.Combine(WholeRecord.Folder, "TODAY.md");
        var page = TodayPage.Of(await Judged.AllAsync(CancellationToken.None));
        if (Environment.GetEnvironmentVariable("REWRITE_TODAY") == "1")
            await File.WriteAllTextAsync(file, page);

        Assert.True(await File.ReadAllTextAsync(file) == page, "tests/records/whole/TODAY.md is stale: run tests/rewrite and look at the difference.");
    }
}
