using Records;
using Storage;
using Visits;
using static Storage.Tests.Shared.Shelf;

namespace Checking.Tests;

/// <summary>Which earlier visits a record is judged with.</summary>
public sealed class EarlierVisitTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Tenants_and_makers_are_kept_apart(string kind)
    {
        var store = new Shelf(_scratch.Open(kind));
        var own = await store.Save("a", "2024-09-10T10:00:00Z", maker: " quillback");
        var older = await store.Save("b", "2023-09-10T10:00:00Z", maker: "Fernlea");
        var other = await store.Save("c", "2025-09-10T10:00:00Z", maker: "Fernlea");
        await store.Save("d", "2024-09-10T10:00:00Z", tenant: Scratch.B);

        var visit = await VisitOf(store, Record("x", "2026-09-14T09:00:00Z"));

        Assert.Equal(own, visit.Lookup.PreviousEvaluationId);
        Assert.Equal([own], visit.Earlier.Select(earlier => earlier.EvaluationId));
        Assert.Equal(other, visit.OfAnotherMaker?.EvaluationId);
        Assert.DoesNotContain(older, visit.Lookup.History!.Select(earlier => earlier.EvaluationId));
    }

    [Fact]
    public async Task The_answer_alone_with_its_record_is_enough_to_judge_again()
    {
        var store = new Shelf(_scratch.Open());
        await store.Save("a", "2024-09-10T10:00:00Z");
        var record = Record("x", "2026-09-14T09:00:00Z");
        var first = Scratch.Rules.Evaluate(record, (await VisitOf(store, record)).Lookup);

        var again = Scratch.Rules.Evaluate(record, Lookup.Of(first.Context));

        Assert.Equal((first.InputHash, first.ResultHash), (again.InputHash, again.ResultHash));
        Assert.NotEqual(first.InputHash, Scratch.Rules.Evaluate(record).InputHash);
    }

    private static async Task<Visit> VisitOf(Shelf store, ServiceRecord record) =>
        Scratch.Rules.VisitOf(record, LookedUp.Beside(record, null, (await store.Find([record]))[0]));
}
