using System.Collections.Concurrent;
using ComplianceApi.Configuration;
using Jobs.Queue;
using Storage;

namespace ComplianceApi.Api.Audits;

/// <summary>
/// How many audits of one tenant there may be at a time, so that one cannot take the service from the others: <c>Limits:AuditsAtOnce</c>,
/// by default 20, counting those that arrive, wait, are judged or are being answered.
/// </summary>
internal sealed class AuditPlaces(AuditStore audits, IConfiguration configuration)
{
    private readonly int _most = Settings.Whole(configuration, SettingNames.AuditsAtOnce, absent: 20);
    private readonly ConcurrentDictionary<string, int> _answering = new(StringComparer.Ordinal);

    /// <summary>Takes a place until the answer is sent; false when there is none left.</summary>
    public async Task<bool> TryTakeAsync(Tenant tenant, HttpResponse response, CancellationToken cancel)
    {
        var answering = _answering.AddOrUpdate(tenant.Name, 1, (_, count) => count + 1);
        response.RegisterForDispose(new Place(() => _answering.AddOrUpdate(tenant.Name, 0, (_, count) => count - 1)));
        return answering + await audits.CountOpenAsync(tenant, cancel) <= _most;
    }

    private sealed class Place(Action leave) : IDisposable
    {
        public void Dispose() => leave();
    }
}
