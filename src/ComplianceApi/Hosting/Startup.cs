using Checking;
using ComplianceApi.Api.Appliances;
using ComplianceApi.Api.Audits;
using ComplianceApi.Api.Evaluations;
using ComplianceApi.Api.Requests;
using ComplianceApi.Api.Rules;
using ComplianceApi.Api.Schemas;
using ComplianceApi.Configuration;
using ComplianceApi.Guard;
using Findings;
using Kernel.Catalogues;
using Records.Reading;
using Rules;
using Storage;
using Visits.Facts;
using Visits.Judging;

namespace ComplianceApi.Hosting;

/// <summary>
/// What must hold before the service listens: a whole rule set that compiles and judges the example record, and a store that opens.
/// </summary>
public static class Startup
{
    /// <summary>Adds the engine, the store and what judges with them.</summary>
    public static void AddTo(IServiceCollection services)
    {
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(provider => ShippedRules.Start(Overrides.ReadFile(provider.GetRequiredService<IConfiguration>()[SettingNames.Overrides])));
        services.AddSingleton<IRecordLaw>(provider => provider.GetRequiredService<ComplianceEngine>().Law);
        services.AddSingleton(provider => StorePlace.Open(provider.GetRequiredService<IConfiguration>()));
        services.AddSingleton<EvaluationStore>();
        services.AddSingleton<ProfileStore>();
        services.AddSingleton<Journal>();
        services.AddSingleton<HistoryStore>();
        services.AddSingleton<TimelineStore>();
        services.AddSingleton<EvaluationList>();
        services.AddSingleton<DueStore>();
        services.AddSingleton<ApplianceHistory>();
        services.AddSingleton(provider => new IdempotencyStore(
            provider.GetRequiredService<Database>(), RequestTime.Longest(provider.GetRequiredService<IConfiguration>())));
        services.AddSingleton<RecordIntake>();
        services.AddSingleton<Repeats>();
        services.AddSingleton<RuleShelf>();
        AuditService.AddTo(services);
    }

    /// <summary>Compiles and tries the rules, and opens the store.</summary>
    /// <exception cref="StartRefusedException">The rule set is not whole, the store cannot be opened or a setting is mistyped.</exception>
    public static void Demand(IServiceProvider services)
    {
        // The first record takes its reader as long as the rules take to compile, so it is read beside that.
        var reading = Task.Run(ReadExample);
        try
        {
            var engine = services.GetRequiredService<ComplianceEngine>();
            reading.GetAwaiter().GetResult();
            SelfTest(engine);
            services.GetRequiredService<Database>();
            // What reads a setting is made now, so that a mistyped one is told before anything listens.
            services.GetRequiredService<AuditService>();
            services.GetRequiredService<AuditPlaces>();
            services.GetRequiredService<DearPlaces>();
        }
        catch (Exception fault) when (fault is CatalogueException or StoreException)
        {
            throw new StartRefusedException(fault.Message);
        }
    }

    private static ReadResult ReadExample()
    {
        using var example = new MemoryStream();
        using var resource = typeof(RuleIds).Assembly.GetManifestResourceStream("example-record.json")!;
        resource.CopyTo(example);
        return RecordReader.Read(example.ToArray());
    }

    /// <summary>Every rule must be able to judge the example record, and judge it the same way twice.</summary>
    private static void SelfTest(ComplianceEngine engine)
    {
        var example = RecordReader.Read(engine.Catalogue.ExampleRecord).Record
            ?? throw new CatalogueException(["example-record.json has faults"]);
        var evaluation = engine.Evaluate(example);
        var failed = evaluation.Findings.Where(finding => finding.Outcome == Outcome.Error).Select(finding => $"{finding.RuleId} cannot judge the example record").ToList();
        if (failed.Count > 0)
            throw new CatalogueException(failed);
        if (engine.Evaluate(example).ResultHash != evaluation.ResultHash)
            throw new CatalogueException(["the example record is not judged the same way twice"]);
    }
}
