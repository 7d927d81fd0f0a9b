using Storage.Tests.Shared;

namespace Storage.Tests;

public sealed class DatabaseTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public async Task Bringing_the_tables_up_to_date_twice_changes_nothing()
    {
        await _scratch.Open().PingAsync(default);
        await _scratch.Open().PingAsync(default);
    }

    [Fact]
    public async Task Several_may_open_a_new_file_at_the_same_time()
    {
        var opened = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => Database.Open(_scratch.File, StoreOpening.OrMake))));

        foreach (var database in opened)
        {
            using (database)
                await database.PingAsync(default);
        }
    }

    [Fact]
    public void A_file_that_is_no_database_is_named_and_left_alone()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(_scratch.File)!);
        File.WriteAllText(_scratch.File, new string('x', 5000));

        var refusal = Assert.Throws<StoreException>(() => _scratch.Open());

        Assert.Contains(_scratch.File, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(new string('x', 5000), File.ReadAllText(_scratch.File));
    }
}
