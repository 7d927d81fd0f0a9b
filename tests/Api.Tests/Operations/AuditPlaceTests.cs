using System.Net;
using Api.Tests.Contract;
using Api.Tests.Keys;
using Microsoft.Extensions.DependencyInjection;
using Storage;
using Storage.Keys;
using Visits.Judging;

namespace Api.Tests.Operations;

public sealed class AuditPlaceTests
{
    [Fact]
    public async Task One_tenant_has_only_so_many_audits_at_a_time()
    {
        // No other service is started on this store: its workers would make places free.
        await using var service = new ServiceInProcess();
        await using var small = service.WithWebHostBuilder(builder => builder.UseSetting("Limits:AuditsAtOnce", "2").UseSetting("Audits:Workers", "0"));
        var (one, other) = (await KeyOf("a"), await KeyOf("b"));
        await ServiceWithKeys.Seen();
        var records = AuditCalls.Lines(AuditCalls.Month(small.Services.GetRequiredService<ComplianceEngine>().Catalogue.ExampleRecord, 2));

        var first = (await Post(one)).Headers.Location;
        Assert.Equal(HttpStatusCode.Accepted, (await Post(one)).StatusCode);
        var refused = await Post(one);
        Assert.Equal("/problems/too-many-audits", (await refused.Read(HttpStatusCode.TooManyRequests))["type"].Text());
        Assert.NotNull(refused.Headers.RetryAfter);
        Assert.Equal(HttpStatusCode.TooManyRequests, (await Post(one, later: false)).StatusCode);
        Assert.Equal(HttpStatusCode.Accepted, (await Post(other)).StatusCode);

        await Client(one).DeleteAsync(first);
        Assert.Equal(HttpStatusCode.OK, (await Post(one, later: false)).StatusCode);

        Task<string> KeyOf(string tenant) => small.Services.GetRequiredService<KeyStore>().AddAsync(new Tenant(tenant), [KeyScope.Admin], "", ServiceInProcess.Now, expiresAt: null, CancellationToken.None);

        Task<HttpResponseMessage> Post(string key, bool later = true) => Client(key).PostAudit(records, later: later);

        HttpClient Client(string key)
        {
            var client = small.CreateDefaultClient(new ContractHandler());
            client.DefaultRequestHeaders.Authorization = new("Bearer", key);
            return client;
        }
    }
}
