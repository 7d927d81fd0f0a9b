using System.Net;
using System.Text;
using Microsoft.Data.Sqlite;
using Storage;
using Storage.Keys;

namespace Api.Tests.Keys;

/// <summary>What opens the service, and what does not.</summary>
public sealed class KeyTests(ServiceWithKeys service) : IClassFixture<ServiceWithKeys>, IAsyncLifetime
{
    private string _key = "";

    public async Task InitializeAsync() => _key = await service.KeyOf("a", KeyScope.Read);

    public Task DisposeAsync() => Task.CompletedTask;

    [Theory]
    [InlineData(null, "Bearer")]
    [InlineData("", "Bearer")]
    [InlineData("Bearer", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer ", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer .", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer {id}", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer {id}.", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer {hash}", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer {id}.{hash}", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer {key}x", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer {less}", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer {KEY}", "Bearer error=\"invalid_token\"")]
    [InlineData("Bearer {key}, Bearer {key}", "Bearer error=\"invalid_token\"")]
    [InlineData("{key}", "Bearer error=\"invalid_token\"")]
    [InlineData("Basic {basic}", "Bearer error=\"invalid_token\"")]
    public async Task Nothing_but_the_key_opens(string? header, string challenge)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, "/v1/audits");
        if (header is not null)
            Assert.True(request.Headers.TryAddWithoutValidation("Authorization", Filled(header)));

        var response = await service.Nobody.SendAsync(request);

        Assert.Equal("/problems/key-needed", (await response.Read(HttpStatusCode.Unauthorized))["type"].Text());
        Assert.Equal(challenge, Assert.Single(response.Headers.WwwAuthenticate).ToString());
    }

    [Theory]
    [InlineData("Bearer {key}")]
    [InlineData("bearer {key}")]
    [InlineData("BEARER  {key} ")]
    public async Task The_key_opens(string header)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, "/v1/audits");
        request.Headers.TryAddWithoutValidation("Authorization", Filled(header));

        await (await service.Nobody.SendAsync(request)).Read();
    }

    [Fact]
    public async Task A_key_shown_in_the_query_or_the_body_opens_nothing()
    {
        await (await service.Nobody.GetAsync($"/v1/rules?key={_key}&access_token={_key}")).Read(HttpStatusCode.Unauthorized);
        await (await service.Nobody.PostRecord(service.Inner.ExampleRecord.With(record => (record["tenant"], record["key"]) = ("a", _key)))).Read(HttpStatusCode.Unauthorized);
    }

    [Fact]
    public async Task A_tenant_named_in_a_body_is_an_unknown_member()
    {
        var client = await service.ClientOf("a", KeyScope.Evaluate);

        var problem = await (await client.PostRecord(service.Inner.ExampleRecord.With(record => record["tenant"] = "b"))).Read(HttpStatusCode.UnprocessableEntity);

        Assert.Equal(["unknownMember"], problem["errors"].Texts("code"));
    }

    [Fact]
    public async Task Old_and_new_key_work_side_by_side_until_the_old_one_is_revoked()
    {
        var (old, next) = (await service.NewKey("a", KeyScope.Read), await service.NewKey("a", KeyScope.Read));
        await ServiceWithKeys.Seen();
        await (await service.With(old).GetAsync("/v1/audits")).Read();
        await (await service.With(next).GetAsync("/v1/audits")).Read();

        Assert.True(await service.Keys.RevokeAsync(KeyText.IdOf(old), ServiceInProcess.Now, CancellationToken.None));
        Assert.False(await service.Keys.RevokeAsync(KeyText.IdOf(old), ServiceInProcess.Now, CancellationToken.None));
        await ServiceWithKeys.Seen();

        await (await service.With(old).GetAsync("/v1/audits")).Read(HttpStatusCode.Unauthorized);
        await (await service.With(next).GetAsync("/v1/audits")).Read();
    }

    [Theory]
    [InlineData(-1, HttpStatusCode.Unauthorized)]
    [InlineData(0, HttpStatusCode.Unauthorized)]
    [InlineData(1, HttpStatusCode.OK)]
    public async Task A_key_works_up_to_its_end(int secondsLeft, HttpStatusCode expected)
    {
        var end = ServiceInProcess.Now.AddSeconds(secondsLeft);
        var key = await service.Keys.AddAsync(new Tenant("a"), [KeyScope.Read], "", ServiceWithKeys.Past, end, CancellationToken.None);
        await ServiceWithKeys.Seen();

        await (await service.With(key).GetAsync("/v1/audits")).Read(expected);
    }

    [Fact]
    public async Task The_store_holds_no_key()
    {
        var session = await service.Keys.BeginSessionAsync(KeyText.IdOf(_key), ServiceInProcess.Now.AddHours(1), CancellationToken.None);
        SqliteConnection.ClearAllPools();

        var stored = string.Concat(Directory.GetFiles(Path.GetDirectoryName(service.Inner.StorePath)!, "compliance.db*").Select(file => Encoding.Latin1.GetString(Shared(file))));

        Assert.Contains(KeyText.HashOf(_key), stored, StringComparison.Ordinal);
        Assert.DoesNotContain(_key.Split('.')[1], stored, StringComparison.Ordinal);
        Assert.Contains(KeyText.HashOf(session), stored, StringComparison.Ordinal);
        Assert.DoesNotContain(session, stored, StringComparison.Ordinal);
    }

    [Fact]
    public void A_secret_has_256_bits_and_none_is_made_twice()
    {
        var keys = Enumerable.Range(0, 1000).Select(_ => KeyText.New()).ToList();

        Assert.All(keys, key => Assert.Matches("^[0-9a-f]{12}\\.[A-Za-z0-9_-]{43}$", key));
        Assert.Equal(1000, keys.Distinct(StringComparer.Ordinal).Count());
        Assert.True(KeyText.Matches(keys[0], KeyText.HashOf(keys[0])));
        Assert.False(KeyText.Matches(keys[0], KeyText.HashOf(keys[1])));
        Assert.False(KeyText.Matches(keys[0], ""));
    }

    private static byte[] Shared(string file)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private string Filled(string header) => header
        .Replace("{id}", KeyText.IdOf(_key), StringComparison.Ordinal)
        .Replace("{hash}", KeyText.HashOf(_key), StringComparison.Ordinal)
        .Replace("{less}", _key[..^1], StringComparison.Ordinal)
        .Replace("{KEY}", _key.ToUpperInvariant(), StringComparison.Ordinal)
        .Replace("{basic}", Convert.ToBase64String(Encoding.UTF8.GetBytes("a:" + _key)), StringComparison.Ordinal)
        .Replace("{key}", _key, StringComparison.Ordinal);
}
