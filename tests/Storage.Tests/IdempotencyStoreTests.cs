using Dapper;
using Storage.Tests.Shared;

namespace Storage.Tests;

/// <summary>The row of a key is its lock, seen from two instances on one store.</summary>
public sealed class IdempotencyStoreTests : IDisposable
{
    private static readonly TimeSpan Long = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(300);

    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Of_many_who_take_a_key_at_once_one_has_it(string kind)
    {
        var stores = Enumerable.Range(0, 4).Select(_ => new IdempotencyStore(_scratch.Open(kind), Long)).ToList();
        for (var round = 0; round < 10; round++)
        {
            var taken = await Task.WhenAll(stores.Select((store, number) => Task.Run(() => store.TakeAsync(Scratch.A, Asked($"key {round}", number), default))));

            Assert.Single(taken, holder => holder is null);
            Assert.Single(taken.OfType<KeyHolder>().Select(holder => holder.EvaluationId).Distinct());
            Assert.All(taken.OfType<KeyHolder>(), holder => Assert.False(holder.IsSettled));
        }
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_key_whose_lease_is_over_is_the_next_ones_and_its_first_holder_stores_nothing(string kind)
    {
        var (first, second) = (_scratch.Open(kind), _scratch.Open(kind));
        var (slow, quick) = (Asked("key", 0), Asked("key", 1));
        Assert.Null(await new IdempotencyStore(first, Short).TakeAsync(Scratch.A, slow, default));

        await Task.Delay(Short * 2);

        // Over, even while nobody else has taken it.
        await Assert.ThrowsAsync<KeyLostException>(() => Save(first, slow, 0));
        Assert.Null(await new IdempotencyStore(second, Long).TakeAsync(Scratch.A, quick, default));
        await Assert.ThrowsAsync<KeyLostException>(() => Save(first, slow, 0));
        Assert.True(await Save(second, quick, 1));

        Assert.Null(await new EvaluationStore(second, Scratch.Rules.Law).FindAsync(Scratch.A, slow.EvaluationId, default));
        Assert.NotNull(await new EvaluationStore(first, Scratch.Rules.Law).FindAsync(Scratch.A, quick.EvaluationId, default));
        var holder = await new IdempotencyStore(first, Long).TakeAsync(Scratch.A, slow, default);
        Assert.Equal((quick.EvaluationId, true), (holder!.EvaluationId, holder.IsSettled));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_key_is_given_up_by_its_holder_alone_and_not_once_it_is_settled(string kind)
    {
        var database = _scratch.Open(kind);
        var keys = new IdempotencyStore(database, Long);
        var (mine, another) = (Asked("key", 0), Asked("key", 1));
        await keys.TakeAsync(Scratch.A, mine, default);

        await keys.ReleaseAsync(Scratch.A, another, default);
        await keys.ReleaseAsync(Scratch.B, mine, default);
        Assert.NotNull(await keys.TakeAsync(Scratch.A, another, default));
        await keys.ReleaseAsync(Scratch.A, mine, default);
        Assert.Null(await keys.TakeAsync(Scratch.A, another, default));

        await Save(database, another, 1);
        await keys.ReleaseAsync(Scratch.A, another, default);
        Assert.True((await keys.TakeAsync(Scratch.A, mine, default))!.IsSettled);
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_purge_takes_the_keys_of_what_it_removes_and_those_whose_lease_is_over(string kind)
    {
        var database = _scratch.Open(kind);
        var keys = new IdempotencyStore(database, Long);
        await new IdempotencyStore(database, Short).TakeAsync(Scratch.A, Asked("of a killed holder", 0), default);
        await keys.TakeAsync(Scratch.A, Asked("of an evaluation", 1), default);
        await keys.TakeAsync(Scratch.A, Asked("in use", 2), default);
        await Save(database, Asked("of an evaluation", 1), 1);
        await Task.Delay(Short * 2);

        await new Retention(database, Scratch.Rules.Law, TimeProvider.System).PurgeAsync(Scratch.A, new DateTimeOffset(2030, 1, 1, 0, 0, 0, TimeSpan.Zero), _ => { }, default);

        Assert.Equal(["in use"], await database.ReadAsync(connection => connection.QueryAsync<string>("SELECT idempotency_key FROM idempotency_keys"), default));
    }

    private static KeyedRequest Asked(string key, int number) => new(key, $"fingerprint {number}", $"01a22c54-0000-7000-8000-{number:000000000000}");

    private static Task<bool> Save(Database database, KeyedRequest asked, int number) => new EvaluationStore(database, Scratch.Rules.Law).SaveAsync(
        Scratch.A,
        Records.Reading.RecordReader.Read(Scratch.Posted).Record!,
        Scratch.Posted,
        Scratch.Evaluation(number) with { EvaluationId = asked.EvaluationId },
        global::Findings.Include.Passes,
        default,
        keyed: asked);
}
