using System.Data.Common;
using ComplianceApi.Configuration;
using ComplianceApi.Guard;
using ComplianceApi.Operations;
using Jobs.Backfill;
using Jobs.Looks;
using Jobs.Previews;
using Jobs.Queue;
using Jobs.Workers;
using Storage;

namespace ComplianceApi.Api.Audits;

/// <summary>Judges stored audits beside the requests, with as many workers as there are cores. Ended in whatever way, it goes on where it was.</summary>
internal sealed class AuditService(AuditWorker worker, IConfiguration configuration, ILogger<AuditService> log) : BackgroundService
{
    private static readonly TimeSpan Idle = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan AfterFailure = TimeSpan.FromSeconds(1);
    private readonly int _workers = Settings.Whole(configuration, SettingNames.AuditWorkers, Environment.ProcessorCount, least: 0);

    public static void AddTo(IServiceCollection services)
    {
        services.AddSingleton<AuditIntake>();
        services.AddSingleton<AuditStore>();
        services.AddSingleton<AuditFinish>();
        services.AddSingleton<Corrections>();
        services.AddSingleton<ResultStore>();
        services.AddSingleton<AuditVisits>();
        services.AddSingleton<UnfinishedVisits>();
        services.AddSingleton<UnplacedLines>();
        services.AddSingleton<UnplacedVisits>();
        services.AddSingleton<UnjournaledEntries>();
        services.AddSingleton<FindingStore>();
        services.AddSingleton<AuditReception>();
        services.AddSingleton<AuditPlaces>();
        services.AddSingleton<DearPlaces>();
        services.AddSingleton<AuditWorker>();
        services.AddSingleton<CandidateEngines>();
        services.AddSingleton<PreviewIntake>();
        services.AddSingleton<PreviewStore>();
        services.AddSingleton<PreviewWork>();
        services.AddSingleton<LookStore>();
        services.AddSingleton(provider => new WaitingChunks(
            provider.GetRequiredService<Database>(),
            provider.GetRequiredService<TimeProvider>(),
            Settings.Seconds(provider.GetRequiredService<IConfiguration>(), SettingNames.AuditLeaseSeconds, 60)));
        services.AddSingleton<AuditService>();
        services.AddHostedService(provider => provider.GetRequiredService<AuditService>());
    }

    protected override Task ExecuteAsync(CancellationToken stoppingToken) => Task.WhenAll(
        Enumerable.Range(0, _workers).Select(_ => Task.Run(() => WorkAsync(stoppingToken), stoppingToken)));

    private async Task WorkAsync(CancellationToken stop)
    {
        var isWell = true;
        while (!stop.IsCancellationRequested)
        {
            try
            {
                // A chunk that was begun is done: it takes less than a second.
                var hasWorked = await worker.RunOneAsync(CancellationToken.None);
                isWell = true;
                if (hasWorked)
                    Telemetry.ChunkDone();
                else
                    await Task.Delay(Idle, stop);
            }
            catch (OperationCanceledException)
            {
                return;
            }
            catch (Exception fault)
            {
                if (isWell)
                    log.LogError(fault, "Audits wait: {Kind}", KindOf(fault));
                isWell = false;
                await Task.Delay(AfterFailure, CancellationToken.None);
            }
        }
    }

    private static string KindOf(Exception fault) => fault switch
    {
        StoreUpgradedException => "a newer version has upgraded the store, and this instance has to be replaced",
        DbException => "the store does not answer",
        _ => "a worker failed",
    };
}
