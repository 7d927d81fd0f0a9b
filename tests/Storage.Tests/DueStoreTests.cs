using Findings;
using Storage.Tests.Shared;

namespace Storage.Tests;

/// <summary>What falls due, read back page by page.</summary>
public sealed class DueStoreTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_falls_due_is_read_from_the_start_and_from_any_place(string kind)
    {
        var database = _scratch.Open(kind);
        DueDate[] due =
        [
            new() { Kind = DueKind.AnnualService, By = new DateOnly(2027, 9, 14), Basis = "invented", SerialNumber = "QB-1" },
            new() { Kind = DueKind.CoAlarmReplacement, By = new DateOnly(2028, 1, 1), Basis = "invented", SerialNumber = "QB-1" },
        ];
        Assert.True(await new EvaluationStore(database, Scratch.Rules.Law).SaveAsync(Scratch.A, Scratch.Record(), Scratch.Posted, Scratch.Evaluation(), Include.Passes, default, due));
        var (store, from, to) = (new DueStore(database), new DateOnly(2027, 1, 1), new DateOnly(2028, 12, 31));

        var first = Assert.Single(await store.PageAsync(Scratch.A, from, to, null, 1, default));
        var rest = await store.PageAsync(Scratch.A, from, to, DueCursor.Of(first), 10, default);

        Assert.Equal(due.Select(one => one.Kind), rest.Prepend(first).Select(one => one.Kind));
        Assert.Equal(2, await store.CountAsync(Scratch.A, from, to, default));
        Assert.Empty(await store.PageAsync(Scratch.B, from, to, null, 10, default));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_was_left_waits_from_its_day_on_until_a_later_visit_settles_it(string kind)
    {
        var database = _scratch.Open(kind);
        var (evaluations, store) = (new EvaluationStore(database, Scratch.Rules.Law), new DueStore(database));
        var left = new DueDate { Kind = DueKind.BeforeUse, By = new DateOnly(2026, 9, 14), Basis = "invented", SerialNumber = "QB-1" };
        Assert.True(await evaluations.SaveAsync(Scratch.A, Scratch.Record(), Scratch.Posted, Scratch.Evaluation(), Include.Passes, default, [left]));

        Assert.Equal(DueKind.BeforeUse, Assert.Single(await PageAsync()).Kind);

        var later = Scratch.Record(recordId: "R-2");
        Assert.True(await evaluations.SaveAsync(Scratch.A, later, Scratch.Posted, Scratch.Evaluation(1), Include.Passes, default, [left with { By = new DateOnly(2026, 9, 17), IsSettled = true }]));
        Assert.Empty(await PageAsync());
        Assert.Equal(0, await store.CountAsync(Scratch.A, new DateOnly(2000, 1, 1), new DateOnly(2030, 1, 1), default));

        Task<IReadOnlyList<DueDate>> PageAsync() => store.PageAsync(Scratch.A, new DateOnly(2027, 1, 1), new DateOnly(2028, 12, 31), null, 10, default);
    }
}
