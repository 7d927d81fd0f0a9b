using System.Threading.RateLimiting;
using ComplianceApi.Configuration;
using ComplianceApi.Problems;
using Storage;

namespace ComplianceApi.Guard;

/// <summary>
/// How much dear work is done at a time, so that no few requests take the service from everybody: <c>Limits:DearAtOnce</c> in this
/// process (default: its cores, at least 2), and of them <c>Limits:DearAtOnceForTenant</c> for one tenant (default: half, at least 1).
/// What finds no place waits, a few of each tenant; beyond that it is refused. A place is taken once the body is there, and left before
/// the answer is sent: who sends or reads slowly keeps nobody from working.
/// </summary>
internal sealed class DearPlaces : IDisposable
{
    private const int WaitingOfTenant = 8;
    private const int WaitingOfAll = 32;

    private readonly PartitionedRateLimiter<Tenant> _ofTenant;
    private readonly ConcurrencyLimiter _ofAll;

    public DearPlaces(IConfiguration configuration)
    {
        var most = Settings.Whole(configuration, SettingNames.DearAtOnce, Math.Max(2, Environment.ProcessorCount));
        var mostOfTenant = Settings.Whole(configuration, SettingNames.DearAtOnceForTenant, Math.Max(1, most / 2));
        _ofAll = new ConcurrencyLimiter(Places(most, WaitingOfAll));
        _ofTenant = PartitionedRateLimiter.Create<Tenant, string>(tenant => RateLimitPartition.GetConcurrencyLimiter(tenant.Name, _ => Places(mostOfTenant, WaitingOfTenant)));
        KeepThreadsFree(most);
    }

    /// <summary>Does dear work in a place of its own, after waiting for one; refuses it where too many wait already.</summary>
    /// <param name="tenant">For whom.</param>
    /// <param name="work">What is to be done.</param>
    /// <param name="cancel">Gives up waiting.</param>
    public async Task<IResult> InPlaceAsync(Tenant tenant, Func<Task<IResult>> work, CancellationToken cancel)
    {
        // First among the tenant's own: what waits there takes no place that another tenant's work could have.
        using var own = await _ofTenant.AcquireAsync(tenant, cancellationToken: cancel);
        if (!own.IsAcquired)
            return new ProblemResult(ProblemKind.TooMuchAtOnce);

        using var place = await _ofAll.AcquireAsync(cancellationToken: cancel);
        return place.IsAcquired ? await work() : new ProblemResult(ProblemKind.TooBusy);
    }

    public void Dispose()
    {
        _ofTenant.Dispose();
        _ofAll.Dispose();
    }

    private static ConcurrencyLimiterOptions Places(int most, int waiting) =>
        new() { PermitLimit = most, QueueLimit = waiting, QueueProcessingOrder = QueueProcessingOrder.OldestFirst };

    /// <summary>
    /// Dear work and the workers of audits keep a thread each for as long as they last. The pool begins with as many threads as there are
    /// cores and adds to them by one or two a second, and so long everybody else would wait; with more, the cores are shared.
    /// </summary>
    private static void KeepThreadsFree(int most)
    {
        ThreadPool.GetMinThreads(out var workers, out var ports);
        ThreadPool.SetMinThreads(Math.Max(workers, 2 * (most + Environment.ProcessorCount)), ports);
    }
}

/// <summary>Says how a route whose work is done in <see cref="DearPlaces"/> refuses.</summary>
public static class DearWork
{
    /// <summary>Documents it.</summary>
    public static TBuilder FailsForDearWork<TBuilder>(this TBuilder route) where TBuilder : IEndpointConventionBuilder => route.Fails(ProblemKind.TooMuchAtOnce, ProblemKind.TooBusy);
}
