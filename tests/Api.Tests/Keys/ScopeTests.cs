using System.Net;
using Api.Tests.Contract;
using Storage.Keys;
using Wire;

namespace Api.Tests.Keys;

/// <summary>Every operation of the document with no key, with a key that lacks its scope, and with one that has it. New routes are taken in by themselves.</summary>
public sealed class ScopeTests(ServiceWithKeys service) : IClassFixture<ServiceWithKeys>, IAsyncLifetime
{
    public static TheoryData<string> All => [.. PublishedContract.V1.Operations.Select(operation => operation.Id)];

    public Task InitializeAsync() => service.KeyOf("somebody", KeyScope.Admin);

    public Task DisposeAsync() => Task.CompletedTask;

    [Fact]
    public void Every_operation_of_v1_asks_for_a_key_and_says_so() => Assert.All(
        PublishedContract.V1.Operations.Where(operation => operation.IsStrict),
        operation => Assert.True(operation.NeedsKey && operation.Responses.ContainsKey("401") && operation.Responses.ContainsKey("429"), $"{operation}: give the route .Needs(KeyScope...) or .NeedsAnyKey()"));

    [Fact]
    public void What_needs_no_key_is_known() => Assert.Equal(
        ["getApiCatalog", "getLiveness", "getProblem", "getReadiness"],
        PublishedContract.V1.Operations.Where(operation => !operation.NeedsKey).Select(operation => operation.Id).Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(All))]
    public async Task Without_a_key_it_is_closed_unless_it_is_open_to_all(string operation)
    {
        var found = Requests.Find(operation);

        var status = (await service.Nobody.SendAsync(Requests.Of(found, service.Inner.ExampleRecord))).StatusCode;

        Assert.Equal(found.NeedsKey, status == HttpStatusCode.Unauthorized);
    }

    [Theory, MemberData(nameof(All))]
    public async Task A_key_opens_what_its_scopes_say_and_nothing_else(string operation)
    {
        var found = Requests.Find(operation);
        var needed = found.Scope is { } name ? Enum.GetValues<KeyScope>().Single(scope => WireNames.Of(scope) == name) : (KeyScope?)null;

        var without = await service.ClientOf("a", [.. Enum.GetValues<KeyScope>().Where(scope => scope != needed && scope != KeyScope.Admin)]);
        var alone = needed is null ? await service.ClientOf("a") : await service.ClientOf("a", needed.Value);
        var refused = await without.SendAsync(Requests.Of(found, service.Inner.ExampleRecord));
        var allowed = await alone.SendAsync(Requests.Of(found, service.Inner.ExampleRecord));

        Assert.Equal(needed is not null, refused.StatusCode == HttpStatusCode.Forbidden);
        if (needed is not null)
        {
            Assert.Equal("/problems/scope-missing", (await refused.Read(HttpStatusCode.Forbidden))["type"].Text());
            Assert.Equal($"Bearer error=\"insufficient_scope\", scope=\"{found.Scope}\"", Assert.Single(refused.Headers.WwwAuthenticate).ToString());
        }

        Assert.False(allowed.StatusCode is HttpStatusCode.Unauthorized or HttpStatusCode.Forbidden, allowed.StatusCode.ToString());
    }
}

/// <summary>A plain request of an operation.</summary>
internal static class Requests
{
    public static Operation Find(string operation) => PublishedContract.V1.Operations.Single(one => one.Id == operation);

    /// <summary>With ids in its path as <paramref name="ids"/> gives them, else some that are nobody's.</summary>
    public static HttpRequestMessage Of(Operation operation, byte[] exampleRecord, IReadOnlyDictionary<string, string>? ids = null) =>
        new(new HttpMethod(operation.Method), operation.PathWith(name => ids?.GetValueOrDefault(name))) { Content = operation.Body is null ? null : Calls.Json(exampleRecord) };
}
