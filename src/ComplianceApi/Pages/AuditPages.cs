using ComplianceApi.Api.Audits;
using ComplianceApi.Api.Requests;
using Findings;
using Jobs.Queue;
using Jobs.Summary;
using Microsoft.AspNetCore.Http.HttpResults;
using Records.Reading;
using Storage;
using Visits.Judging;

namespace ComplianceApi.Pages;

/// <summary>The pages of audits.</summary>
internal static class AuditPages
{
    /// <summary>How the page sorts findings unless it is asked otherwise.</summary>
    public const FindingSort UsualSort = FindingSort.Outcome;

    private const int ShownFirst = 12, RowsAtOnce = 50, AuditsAtOnce = 50;

    private static readonly QueryParameter<FindingSort> Sort = Query.OneOf("sort", "By what the findings are sorted.", UsualSort);

    private static readonly QueryParameter<string?> Before = Query.After("next", "Audits before this one.");

    public static void MapAuditPages(this IEndpointRouteBuilder pages)
    {
        pages.MapGet("/audits", List).Takes(Before);
        pages.MapGet("/audits/{auditId}", Audit)
            .Takes(AuditFindingRoutes.Outcome, AuditFindingRoutes.Topic, AuditFindingRoutes.Rule, AuditFindingRoutes.Engineer, AuditFindingRoutes.Record, Sort, AuditFindingRoutes.Next);
        pages.MapGet("/audits/{auditId}/records/{line:long}", Record);
    }

    private static async Task<RazorComponentResult> List(HttpRequest request, AuditStore audits, Tenant tenant, CancellationToken cancel)
    {
        var (items, total) = await audits.ListAsync(tenant, Before.Of(request), AuditsAtOnce + 1, cancel);
        return PageRoutes.Show<AuditsPage>(new { Audits = Paging.PageOf(items, AuditsAtOnce, last => last.AuditId, total) });
    }

    private static async Task<RazorComponentResult> Audit(
        string auditId, HttpRequest request, AuditStore audits, FindingStore findings, ComplianceEngine engine, Tenant tenant, CancellationToken cancel)
    {
        if (await audits.FindAsync(tenant, auditId, cancel) is not { } audit)
            return PageRoutes.Nothing("There is no such audit.");

        var asked = AuditFindingRoutes.QueryOf(request, Sort.Of(request));
        var after = AuditFindingRoutes.Next.Of(request) is { } cursor && cursor.Sort == asked.Sort ? cursor : null;
        var rows = await findings.PageAsync(tenant, auditId, asked, after, RowsAtOnce + 1, cancel);
        var first = new List<(WorstAppliance, IReadOnlyList<Finding>)>();
        foreach (var worst in (audit.Summary?.WorstAppliances.Rows ?? []).Where(row => row.Counts.Unsafe > 0).Take(ShownFirst))
        {
            if (await audits.LineAsync(tenant, auditId, worst.Line, cancel) is { Answer.Evaluation: { } evaluation })
                first.Add((worst, [.. evaluation.Findings.Where(finding => finding.Outcome == Outcome.Unsafe)]));
        }

        return PageRoutes.Show<AuditPage>(new
        {
            View = new AuditView
            {
                Audit = audit,
                First = first,
                RatioLimits = audit.Summary is { } summary ? RatioChart.LimitsOf(summary, engine.Catalogue.Limits) : [],
                Asked = asked,
                Findings = Paging.PageOf(rows, RowsAtOnce, last => FindingCursor.Of(last, asked.Sort).ToText(), total: null),
            },
        });
    }

    private static async Task<RazorComponentResult> Record(string auditId, long line, AuditStore audits, Tenant tenant, CancellationToken cancel)
    {
        if (await audits.FindAsync(tenant, auditId, cancel) is not { } audit || await audits.LineAsync(tenant, auditId, line, cancel) is not { } found)
            return PageRoutes.Nothing("The audit has no answer for such a line.");

        return found.Answer.Evaluation is { } evaluation
            ? PageRoutes.Show<EvaluationPage>(new { Evaluation = evaluation, RecordReader.Read(found.Record).Record, Audit = audit, Line = (long?)line })
            : PageRoutes.Show<RejectedPage>(new { Audit = audit, found.Answer });
    }
}
