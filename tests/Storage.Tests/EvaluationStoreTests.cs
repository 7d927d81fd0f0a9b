using System.Text.Json;
using Dapper;
using Findings;
using Storage.Tests.Shared;

namespace Storage.Tests;

public sealed class EvaluationStoreTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_was_saved_is_found_unchanged(string kind)
    {
        var store = new EvaluationStore(_scratch.Open(kind), Scratch.Rules.Law);
        var evaluation = Scratch.Evaluation();

        Assert.True(await Save(store, Scratch.A, evaluation, Include.Problems));

        var found = await store.FindAsync(Scratch.A, evaluation.EvaluationId!, default);
        Assert.Equal(Json(evaluation), Json(found!.Evaluation));
        Assert.Equal(Include.Problems, found.Shown);
        Assert.Null(found.SupersededBy);
        Assert.Equal(Scratch.Posted, await store.FindRecordAsync(Scratch.A, evaluation.EvaluationId!, default));
    }

    [Theory]
    [InlineData("default", Include.Passes)]
    [InlineData("problems", Include.Problems)]
    [InlineData("all", Include.All)]
    public async Task What_older_versions_were_asked_to_show_is_understood(string stored, Include shown)
    {
        var database = _scratch.Open("sqlite");
        var store = new EvaluationStore(database, Scratch.Rules.Law);
        var evaluation = Scratch.Evaluation();
        await Save(store, Scratch.A, evaluation);
        Assert.True(await database.WriteAsync(async transaction => await transaction.Connection!.ExecuteAsync("UPDATE evaluations SET shown = @stored", new { stored }, transaction) == 1, default));

        Assert.Equal(shown, (await store.FindAsync(Scratch.A, evaluation.EvaluationId!, default))!.Shown);
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Two_tenants_do_not_see_each_other(string kind)
    {
        var store = new EvaluationStore(_scratch.Open(kind), Scratch.Rules.Law);
        var evaluation = Scratch.Evaluation();
        await Save(store, Scratch.A, evaluation);

        Assert.Null(await store.FindAsync(Scratch.B, evaluation.EvaluationId!, default));
        Assert.Null(await store.FindRecordAsync(Scratch.B, evaluation.EvaluationId!, default));
        Assert.False(await store.SaveAsync(Scratch.B, Scratch.Record(evaluation.EvaluationId), Scratch.Posted, Scratch.Evaluation(1), Include.Passes, default));

        // The same id in both: each keeps its own.
        await Save(store, Scratch.B, evaluation with { RecordId = "of B" });
        Assert.Equal("of B", (await store.FindAsync(Scratch.B, evaluation.EvaluationId!, default))!.Evaluation.RecordId);
        Assert.Equal(evaluation.RecordId, (await store.FindAsync(Scratch.A, evaluation.EvaluationId!, default))!.Evaluation.RecordId);
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task An_evaluation_is_superseded_once(string kind)
    {
        var store = new EvaluationStore(_scratch.Open(kind), Scratch.Rules.Law);
        var (first, second, third) = (Scratch.Evaluation(0), Scratch.Evaluation(1), Scratch.Evaluation(2));
        await Save(store, Scratch.A, first);

        Assert.True(await Supersede(store, first, second));
        Assert.Equal(second.EvaluationId, (await store.FindAsync(Scratch.A, first.EvaluationId!, default))!.SupersededBy);

        Assert.False(await Supersede(store, first, third));
        Assert.Null(await store.FindAsync(Scratch.A, third.EvaluationId!, default));
        Assert.True(await Supersede(store, second, third));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Nothing_is_superseded_by_what_could_not_be_stored(string kind)
    {
        var store = new EvaluationStore(_scratch.Open(kind), Scratch.Rules.Law);
        var (first, second) = (Scratch.Evaluation(0), Scratch.Evaluation(1));
        await Save(store, Scratch.A, first);
        await Save(store, Scratch.A, second);

        await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(() => Supersede(store, first, second));

        Assert.Null((await store.FindAsync(Scratch.A, first.EvaluationId!, default))!.SupersededBy);
    }

    [Fact]
    public async Task Closed_and_opened_again_it_has_everything()
    {
        var evaluation = Scratch.Evaluation();
        using (var database = Database.Open(_scratch.File, StoreOpening.OrMake))
            await Save(new EvaluationStore(database, Scratch.Rules.Law), Scratch.A, evaluation);

        var again = new EvaluationStore(_scratch.Open(), Scratch.Rules.Law);

        Assert.Equal(Json(evaluation), Json((await again.FindAsync(Scratch.A, evaluation.EvaluationId!, default))!.Evaluation));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Many_writers_lose_nothing_even_through_two_handles_on_one_file(string kind)
    {
        var stores = new[] { new EvaluationStore(_scratch.Open(kind), Scratch.Rules.Law), new EvaluationStore(_scratch.Open(kind), Scratch.Rules.Law) };
        var evaluations = Enumerable.Range(0, 100).Select(Scratch.Evaluation).ToList();

        await Parallel.ForEachAsync(evaluations.Index(), new ParallelOptions { MaxDegreeOfParallelism = 8 }, async (item, _) =>
            Assert.True(await Save(stores[item.Index % 2], Scratch.A, item.Item)));

        foreach (var evaluation in evaluations)
            Assert.NotNull(await stores[0].FindAsync(Scratch.A, evaluation.EvaluationId!, default));
    }

    private static Task<bool> Save(EvaluationStore store, Tenant tenant, Evaluation evaluation, Include shown = Include.Passes) =>
        store.SaveAsync(tenant, Scratch.Record(), Scratch.Posted, evaluation, shown, default);

    private static Task<bool> Supersede(EvaluationStore store, Evaluation old, Evaluation newer) =>
        store.SaveAsync(Scratch.A, Scratch.Record(old.EvaluationId), Scratch.Posted, newer, Include.Passes, default);

    private static string Json(Evaluation evaluation) => JsonSerializer.Serialize(evaluation, EvaluationJson.Wire.Evaluation);
}
