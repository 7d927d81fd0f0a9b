using Records;
using Storage.Tests.Shared;

namespace Storage.Tests;

public sealed class ProfileStoreTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 9, 14, 12, 0, 0, TimeSpan.Zero);

    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Every_save_is_a_version_and_none_is_lost(string kind)
    {
        var store = new ProfileStore(_scratch.Open(kind));

        Assert.Equal(1, (await store.SaveAsync(Scratch.A, "p", Limits(0.0030m), Now, default))!.Version);
        Assert.Equal(2, (await store.SaveAsync(Scratch.A, "p", Limits(0.0040m), Now.AddDays(1), default))!.Version);

        var latest = await store.FindAsync(Scratch.A, "p", version: null, default);
        Assert.Equal((2, 0.0040m, Now.AddDays(1)), (latest!.Version, latest.Limits.CoCo2RatioMax, latest.SavedAt));
        var first = await store.FindAsync(Scratch.A, "p", version: 1, default);
        Assert.Equal((1, 0.0030m, Now), (first!.Version, first.Limits.CoCo2RatioMax, first.SavedAt));
        Assert.Null(await store.FindAsync(Scratch.A, "p", version: 3, default));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Two_tenants_do_not_see_each_other(string kind)
    {
        var store = new ProfileStore(_scratch.Open(kind));
        await store.SaveAsync(Scratch.A, "p", Limits(0.003m), Now, default);

        Assert.Null(await store.FindAsync(Scratch.B, "p", version: null, default));
        Assert.Equal(1, (await store.SaveAsync(Scratch.B, "p", Limits(0.002m), Now, default))!.Version);
        Assert.Equal(0.003m, (await store.FindAsync(Scratch.A, "p", version: null, default))!.Limits.CoCo2RatioMax);
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Saves_at_the_same_time_get_versions_of_their_own(string kind)
    {
        var stores = new[] { new ProfileStore(_scratch.Open(kind)), new ProfileStore(_scratch.Open(kind)) };

        var saved = await Task.WhenAll(Enumerable.Range(0, 40).Select(i => Task.Run(() => stores[i % 2].SaveAsync(Scratch.A, "p", Limits(0.003m), Now, default))));

        Assert.Equal(Enumerable.Range(1, 40), saved.Select(profile => profile!.Version).Order());

        var onTop = await Task.WhenAll(Enumerable.Range(0, 20).Select(i => Task.Run(() => stores[i % 2].SaveAsync(Scratch.A, "p", Limits(0.003m), Now, default, after: 40))));
        Assert.Equal([41], onTop.OfType<ApplianceProfile>().Select(profile => profile.Version));
    }

    private static MakerLimits Limits(decimal ratio) => new() { CoCo2RatioMax = ratio, Source = "invented manual", SealsToRenew = [JointPlace.TopPlate] };
}
