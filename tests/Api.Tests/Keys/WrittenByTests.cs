using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Storage;
using Storage.Keys;

namespace Api.Tests.Keys;

/// <summary>Whose key wrote what: the journal names it for a record, a profile and an audit that is judged later.</summary>
public sealed class WrittenByTests(ServiceWithKeys service) : IClassFixture<ServiceWithKeys>
{
    [Fact]
    public async Task Each_entry_names_the_key_with_which_it_was_written()
    {
        var client = await service.ClientOf("writers", KeyScope.Admin);
        var id = client.DefaultRequestHeaders.Authorization!.Parameter!.Split('.')[0];

        await (await client.PutAsync("/v1/appliance-profiles/p", Calls.Json("{}"))).Read(HttpStatusCode.Created);
        await (await client.PostRecord(service.Inner.ExampleRecord.With(record => record["recordId"] = "posted"))).Read(HttpStatusCode.Created);
        await client.Completed((await client.PostAudit(service.Inner.ExampleRecord.With(record => record["recordId"] = "audited"), later: true)).Headers.Location!);

        var entries = await service.Inner.Services.GetRequiredService<Journal>().ReadAsync(new Tenant("writers"), 0, 10, default);
        Assert.Equal([JournalKind.Profile, JournalKind.Evaluation, JournalKind.Evaluation], entries.Select(entry => entry.Kind));
        Assert.All(entries, entry => Assert.Equal(id, entry.KeyId));
    }
}
