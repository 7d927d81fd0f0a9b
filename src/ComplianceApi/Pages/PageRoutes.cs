using ComplianceApi.Api.Appliances;
using ComplianceApi.Api.Audits;
using ComplianceApi.Api.Requests;
using ComplianceApi.Api.Rules;
using ComplianceApi.Guard;
using ComplianceApi.Pages.Assets;
using Findings;
using Kernel;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using Records.Reading;
using Storage;
using Storage.Keys;
using Visits.Judging;

namespace ComplianceApi.Pages;

/// <summary>The pages for people. Each reads the object that its route of /v1 serves, and adds nothing to it.</summary>
internal static class PageRoutes
{
    private static readonly QueryParameter<string?> Topic = Query.Word("topic", "Only rules of this subject area.", Topics.All);

    private static readonly QueryParameter<SetOfRules?> Set = Query.OneOfOrAny<SetOfRules>("set", "Only rules of this set.");

    private static readonly QueryParameter<string?> Words = Query.Opaque("words", "Only rules that say all of these words.");

    /// <summary>Most visits that the page of an appliance shows.</summary>
    public const int MostVisits = 200;

    /// <summary>Adds what renders them.</summary>
    public static void AddPages(this IServiceCollection services)
    {
        services.AddRazorComponents();
        services.AddSingleton<IAuditReport, AuditReport>();
    }

    /// <summary>Maps them.</summary>
    public static void MapPages(this IEndpointRouteBuilder app)
    {
        var pages = app.MapGroup("").ExcludeFromDescription().ForBrowsers().NeedsAnyKey().WithKnownFilters();
        pages.MapPageFiles();
        pages.MapGet("/", (ComplianceEngine engine) => Show<HomePage>(new { engine.Catalogue }));
        pages.MapGet("/rules", Rules).Takes(Topic, Set, Words);
        pages.MapGet("/rules/{ruleId}", Rule);
        pages.MapGet("/limits", (ComplianceEngine engine) => Show<LimitsPage>(new { engine.Catalogue.Known }));

        var records = pages.MapGroup("").Needs(KeyScope.Read).NeverCached();
        records.MapGet("/evaluations/{evaluationId}", Evaluation);
        records.MapGet("/appliances/{serialNumber}", Appliance);
        records.MapAuditPages();
    }

    /// <summary>Marks pages for people: without a key they lead to where one is shown, and their problems are pages as well.</summary>
    internal static RouteGroupBuilder ForBrowsers(this RouteGroupBuilder pages) => pages.WithMetadata(new BrowserRoute(SignIn.Path), new ProblemPages());

    internal static RazorComponentResult Show<TPage>(object parameters, int status = StatusCodes.Status200OK) where TPage : IComponent =>
        new RazorComponentResult<TPage>(parameters) { StatusCode = status, PreventStreamingRendering = true };

    internal static RazorComponentResult Nothing(string what) =>
        Show<MessagePage>(new { Title = "Nothing is kept here", Lines = new[] { what } }, StatusCodes.Status404NotFound);

    private static RazorComponentResult Rules(HttpRequest request, RuleShelf shelf) =>
        Show<RulesPage>(new { All = shelf.All.ToList(), Topic = Topic.Of(request), Set = Set.Of(request), Words = Words.Of(request) });

    private static RazorComponentResult Rule(string ruleId, RuleShelf shelf) =>
        shelf.Find(ruleId) is { } rule ? Show<RulePage>(new { Rule = rule, shelf.Duties }) : Nothing("There is no such rule.");

    private static async Task<RazorComponentResult> Evaluation(string evaluationId, EvaluationStore evaluations, Tenant tenant, CancellationToken cancel)
    {
        if (await evaluations.FindAsync(tenant, evaluationId, cancel) is not { } stored)
            return Nothing("There is no such evaluation.");

        var record = await evaluations.FindRecordAsync(tenant, evaluationId, cancel);
        return Show<EvaluationPage>(new { stored.Evaluation, RecordReader.Read(record).Record, stored.SupersededBy });
    }

    private static async Task<RazorComponentResult> Appliance(
        string serialNumber, ApplianceHistory history, TimelineStore timelines, Tenant tenant, TimeProvider clock, CancellationToken cancel)
    {
        var (evaluations, total) = await timelines.EvaluationsAsync(tenant, serialNumber, maker: null, clock.GetUtcNow(), after: null, MostVisits, cancel);
        if (evaluations.Count == 0)
            return Nothing("Nothing is kept of an appliance with this serial number.");

        var timeline = await history.FindAsync(tenant, serialNumber, maker: null, knownAt: null, limit: 1, cancel);
        return Show<AppliancePage>(new { SerialNumber = serialNumber, Evaluations = evaluations, Total = total, Trends = timeline?.Trends ?? [] });
    }

    /// <summary>
    /// A mistyped filter would show everything under an address that promises less, so it is refused. A form sends the fields that were
    /// left empty as well: they are taken out of the address.
    /// </summary>
    private static RouteGroupBuilder WithKnownFilters(this RouteGroupBuilder group)
    {
        group.AddEndpointFilter((context, next) => WithoutEmpty(context.HttpContext.Request) is { } address
            ? ValueTask.FromResult<object?>(TypedResults.LocalRedirect(address))
            : next(context));
        group.AddEndpointFilter(async (context, next) => StrictQuery.FaultsOf(context.HttpContext) is { Count: > 0 } faults
            ? Show<MessagePage>(
                new { Title = "This address cannot be read", Lines = faults.Select(fault => $"{fault.Parameter}: {fault.Detail}").ToArray() },
                StatusCodes.Status400BadRequest)
            : await next(context));
        return group;
    }

    private static string? WithoutEmpty(HttpRequest request)
    {
        var given = request.Query.SelectMany(pair => pair.Value, (pair, value) => KeyValuePair.Create(pair.Key, value)).ToList();
        return given.Exists(pair => string.IsNullOrEmpty(pair.Value))
            ? request.Path + QueryString.Create(given.Where(pair => !string.IsNullOrEmpty(pair.Value))).ToUriComponent()
            : null;
    }
}
