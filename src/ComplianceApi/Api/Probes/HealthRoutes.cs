using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Findings;
using Microsoft.AspNetCore.Http.HttpResults;
using Storage;
using Visits.Judging;

namespace ComplianceApi.Api.Probes;

/// <summary>Is the service alive, and can it judge and store?</summary>
public static class HealthRoutes
{
    /// <summary>Maps the routes.</summary>
    public static void MapHealth(this IEndpointRouteBuilder app)
    {
        var routes = app.MapGroup("/health").WithTags("Health").OpenToAll().NeverCached();
        routes.MapGet("/live", Live).WithName("getLiveness");
        routes.MapGet("/ready", Ready).WithName("getReadiness").Fails(ProblemKind.StoreUnavailable);
    }

    /// <summary>The process answers.</summary>
    /// <remarks>Asks nothing else: not the rules, not the store.</remarks>
    private static Ok<Health> Live() => TypedResults.Ok(new Health { Status = "live" });

    /// <summary>The rules are compiled and tried, and the store takes what is written to it.</summary>
    /// <remarks>The service does not listen before the rules are compiled and have judged the example record; here the store is asked whether it is still the one that was opened, and written to.</remarks>
    private static async Task<Ok<Health>> Ready(ComplianceEngine engine, Database database, CancellationToken cancel)
    {
        await database.DemandWellAsync(cancel);
        return TypedResults.Ok(new Health { Status = "ready", RuleSet = engine.Catalogue.Info });
    }
}

/// <summary>State of the service.</summary>
public sealed class Health
{
    /// <summary>live or ready.</summary>
    public required string Status { get; init; }

    /// <summary>The rules that judge.</summary>
    public RuleSetInfo? RuleSet { get; init; }
}
