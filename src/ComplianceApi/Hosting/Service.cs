using ComplianceApi.Api;
using ComplianceApi.Api.Appliances;
using ComplianceApi.Api.Audits;
using ComplianceApi.Api.Calculations;
using ComplianceApi.Api.Due;
using ComplianceApi.Api.Evaluations;
using ComplianceApi.Api.Looks;
using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Probes;
using ComplianceApi.Api.Problems;
using ComplianceApi.Api.Profiles;
using ComplianceApi.Api.Questions;
using ComplianceApi.Api.Requests;
using ComplianceApi.Api.RuleChanges;
using ComplianceApi.Api.Rules;
using ComplianceApi.Api.Sampling;
using ComplianceApi.Configuration;
using ComplianceApi.Guard;
using ComplianceApi.Operations;
using ComplianceApi.Pages;
using ComplianceApi.Problems;

namespace ComplianceApi.Hosting;

/// <summary>The service as a table of contents: what it is made of, what every request passes through, and what it serves.</summary>
internal static class Service
{
    /// <summary>Builds the service; it judges and stores, and does not listen yet.</summary>
    /// <exception cref="StartRefusedException">A setting cannot be read, the rule set is not whole, or the store cannot be opened.</exception>
    public static WebApplication Build(string[] args)
    {
        var builder = WebApplication.CreateBuilder(args);
        Settings.DemandKnown(builder.Configuration);
        builder.ListenGuarded();
        builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
        var listens = builder.Logging.StartQuietly();
        builder.Services.ConfigureHttpJsonOptions(ApiJson.Configure);
        RequestTime.AddTo(builder.Services, builder.Configuration);
        AnswerCompression.AddTo(builder.Services);
        Startup.AddTo(builder.Services);
        Gate.AddTo(builder.Services);
        builder.Services.AddSingleton(new RateLimits(builder.Configuration));
        Documents.AddTo(builder.Services);
        builder.Services.AddPages();
        Telemetry.AddTo(builder);

        var app = builder.Build();
        Startup.Demand(app.Services);
        app.Lifetime.ApplicationStarted.Register(listens);
        app.UseHead();
        app.UseRequestLog();
        app.UseSecurityHeaders();
        app.UseProblems();
        AnswerCompression.Use(app);
        Gate.UseCallers(app);
        RateLimits.Use(app);
        Gate.UseAccess(app);
        app.UseRequestTimeouts();
        app.UseRevalidation();
        app.UseDocuments();

        var all = app.MapGroup("").Fails(ProblemKind.ForwardedRequest, ProblemKind.ForeignHost, ProblemKind.TooManyRequests, ProblemKind.InternalError);
        var v1 = all.MapGroup("/v1").WithStrictQuery().Fails(ProblemKind.TooSlow);
        v1.MapEvaluations();
        v1.MapAudits();
        v1.MapAppliances();
        v1.MapDue();
        v1.MapQuestions();
        v1.MapRecordTemplate();
        v1.MapCatalogue();
        v1.MapCalculations();
        v1.MapProfiles();
        v1.MapSampling();
        v1.MapRuleChanges();
        v1.MapLooks();
        all.MapProblems();
        all.MapHealth();
        all.MapApiCatalog();
        all.MapPages();
        all.MapSignIn();

        app.WarnOfPlainText();
        app.TellOfStore();
        return app;
    }
}
